using System.Text;
using Driveline.Cases;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Reading;

/// <summary>The tables of every member of a study file and of every output, made from the same rows as the reader.</summary>
internal static class StudyDocs
{
    private const string Low = ".low";

    /// <summary>The tables as Markdown: a section for each object, then one for the outputs.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder();
        CaseDocs.Append(page, StudyTables.Own);
        page.Append("\n## output\n\nWhat a case answers, by name; `.low` stands for `.expected` and `.high` too.\n\n")
            .Append("| output | value | of, in brackets | meaning |\n|---|---|---|---|\n");
        foreach (CaseOutputRow row in CaseOutputs.All.Where(r => r.Name.EndsWith(Low, StringComparison.Ordinal) || !IsEnd(r.Name)))
        {
            page.Append("| `").Append(row.Name).Append("` | ").Append(row.Word is null ? "number" : "word")
                .Append(" | ").Append(Of(row.Named)).Append(" | ").Append(row.Doc).Append(" |\n");
        }

        return page.ToString();
    }

    private static bool IsEnd(string name) =>
        name.EndsWith(".expected", StringComparison.Ordinal) || name.EndsWith(".high", StringComparison.Ordinal);

    private static string Of(NamedKind named) => named switch
    {
        NamedKind.Part => "a part",
        NamedKind.Element => "a part or device",
        NamedKind.ShearBolt => "a shear bolt; the first when left out",
        NamedKind.SlipClutch => "a slip clutch; the first when left out",
        _ => string.Empty,
    };
}
