using System.Globalization;
using System.Text;

namespace Driveline.Cases.Results;

/// <summary>The page that describes every member of every result, made from the same rows as the writers.</summary>
internal static class ResultDocs
{
    /// <summary>The page as Markdown: a section for each object, a table row for each member.</summary>
    public static string Markdown()
    {
        var page = new StringBuilder();
        page.Append("# Results as JSON\n\n")
            .Append("What `--json` prints and `ResultDocument` writes: one JSON object in UTF-8. The schema of each kind: "
                + "`driveline schema --result assess`, `advise`, `choose`, `clutch`, `simulate`, `strength`, `identify`, `sweep`, `watch` "
                + "(what `watch --report` writes) or `transient` (what `simulate --model` prints).\n\n")
            .Append("- `null` means not known; `\"unbounded\"` means that there is no end. Neither is ever 0.\n")
            .Append("- Enum values are those of C#. A number has the unit that ends its member's name; a ratio and a chance have none.\n")
            .Append("- Every number that has a basis stands beside it. Texts depend on language and units, numbers never do.\n")
            .Append("- The contract: `contract` is " + ResultDocument.Contract.ToString(CultureInfo.InvariantCulture) + ". Members, and "
                + "words of a choice, may be added under the same number; when one is changed or taken away the number rises. Read what "
                + "you know and pass over the rest.\n");
        Append(page, HeadRows.Shape);
        var shown = new HashSet<ResultShape>();
        foreach (ResultShape shape in ResultSchema.All().SelectMany(kind => ResultSchema.ShapeOf(kind).All()).Where(shown.Add))
        {
            Append(page, shape);
        }

        return page.ToString();
    }

    private static void Append(StringBuilder page, ResultShape shape)
    {
        page.Append("\n## ").Append(shape.Name).Append("\n\n").Append(shape.Doc)
            .Append("\n\n| member | value | meaning |\n|---|---|---|\n");
        foreach (ResultMember member in shape.Members)
        {
            page.Append("| `").Append(member.Name).Append("` | ").Append(Value(member.Type))
                .Append(" | ").Append(member.Doc).Append(" |\n");
        }
    }

    private static string Value(ResultType type)
    {
        if (type.Shape is not { } shape)
        {
            return type.Words;
        }

        string link = "[" + shape.Name + "](#" + shape.Name.ToLowerInvariant() + ")";
        return type.IsMap ? "object, a member a name, of " + link
            : type.IsList ? "list of " + link : type.Words.Length > 0 ? link + " " + type.Words : link;
    }
}
