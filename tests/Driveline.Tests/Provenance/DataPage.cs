using System.Globalization;
using System.Text;
using Driveline.Provenance;

namespace Driveline.Tests.Provenance;

/// <summary>A page of the docs: tables of the numbers held, each row with the mark and the source of its numbers.</summary>
internal sealed class DataPage
{
    private readonly string title;
    private readonly string about;
    private readonly StringBuilder body = new();
    private readonly List<Basis> sources = [];
    private readonly Dictionary<BasisKind, int> marks = [];

    private DataPage(string title, string about)
    {
        this.title = title;
        this.about = about;
    }

    /// <summary>Number of rows by the weakest mark in each.</summary>
    public IReadOnlyDictionary<BasisKind, int> Marks => marks;

    public static DataPage Of(string title, string about) => new(title, about);

    /// <summary>A number as it stands in the tables: at most six figures, without a culture.</summary>
    public static string Number(double value) => double.IsNaN(value) ? string.Empty
        : double.IsPositiveInfinity(value) ? "unbounded"
        : value.ToString("G6", CultureInfo.InvariantCulture);

    /// <summary>The page with one more table.</summary>
    public DataPage Table(string heading, string words, string columns, IEnumerable<DataRow> rows)
    {
        string[] heads = [.. columns.Split('|').Select(c => c.Trim()), "mark", "source"];
        body.Append("\n## ").Append(heading).Append("\n\n").Append(words).Append(words.Length > 0 ? "\n\n" : string.Empty);
        body.Append("| ").AppendJoin(" | ", heads).Append(" |\n|").Append(string.Concat(heads.Select(_ => "---|"))).Append('\n');
        foreach (DataRow row in rows)
        {
            Assert.Equal(heads.Length - 2, row.Cells.Count);
            BasisKind weakest = row.Sources.Min(s => s.Basis.Kind);
            marks[weakest] = marks.GetValueOrDefault(weakest) + 1;
            body.Append("| ").AppendJoin(" | ", row.Cells.Select(Cell))
                .Append(" | ").Append(Each(row, b => b.Kind.ToString()))
                .Append(" | ").Append(Each(row, b => Anchor(Place(b)))).Append(" |\n");
        }

        return this;
    }

    /// <inheritdoc/>
    public override string ToString()
    {
        var page = new StringBuilder();
        page.Append("# ").Append(title).Append("\n\n").Append(about).Append("\n\nRows by the weakest mark in each: ")
            .AppendJoin(", ", marks.OrderByDescending(m => m.Key).Select(m => FormattableString.Invariant($"{m.Key} {m.Value}")))
            .Append(". What the marks mean stands in [the index](index.md).\n")
            .Append(body)
            .Append("\n## Sources\n\n| number | mark and source |\n|---|---|\n");
        foreach (Basis source in sources)
        {
            page.Append("| ").Append(Place(source)).Append(" | ").Append(Cell(source.ToString())).Append(" |\n");
        }

        return page.ToString();
    }

    private static string Anchor(int place) => FormattableString.Invariant($"[{place}](#sources)");

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    // One word where all numbers of the row have the same; else each by the name of its number.
    private static string Each(DataRow row, Func<Basis, string> word)
    {
        string[] words = [.. row.Sources.Select(s => word(s.Basis))];
        return words.Distinct().Count() == 1
            ? words[0]
            : string.Join(", ", row.Sources.Zip(words, (s, w) => s.Of + " " + w));
    }

    private int Place(Basis basis)
    {
        int k = sources.IndexOf(basis);
        if (k < 0)
        {
            sources.Add(basis);
            k = sources.Count - 1;
        }

        return k + 1;
    }
}
