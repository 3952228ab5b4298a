using System.Globalization;
using System.Text;
using Driveline.Tests.SecondTyping;

namespace Driveline.Tests.Consistency;

/// <summary>The page shared/docs/validation.md.</summary>
internal static class ValidationPage
{
    private static readonly (ValidationKind Kind, string Name, string Shows)[] Kinds =
    [
        (ValidationKind.Computed, "computed against print", "the document's inputs go in, our answer is held against the document's"),
        (ValidationKind.SecondMethod, "second method",
            "our answer is held against another way of reckoning it (a closed form, other code)"),
        (ValidationKind.Contained, "inside the band", "the document's number must lie inside our band; the width of the band is no merit"),
        (ValidationKind.Copied, "copy against copy",
            "the number in the code is held against the number in the reference table: shows a slip of the pen, never an error "
                + "of the copy"),
    ];

    public static string Markdown(IReadOnlyList<ValidationRow> rows, int remembered)
    {
        var page = new StringBuilder("""
            # Validation

            What the numbers of this library are held against. The page is made by the tests: each row of each class named `…Published`
            is run and its deviation noted, so the page is true of the code beside it (DEVELOPERS.md tells how to renew it). A deviation
            is the largest share by which one of our numbers was off from the printed one; most of it is the rounding of the print.

            Frozen answers of our own (`ResultRegression`, `PagesRegression`, the approved letters) are not here: they show what a change
            changes, and prove nothing.

            ## By kind

            | kind | what it shows | rows | of a named document | numbers compared | largest deviation |
            |---|---|---|---|---|---|

            """);
        foreach ((ValidationKind kind, string name, string shows) in Kinds)
        {
            ValidationRow[] of = [.. rows.Where(r => r.Kind == kind)];
            page.Append(CultureInfo.InvariantCulture,
                $"| {name} | {shows} | {of.Length} | {of.Count(r => r.IsNamed)} | {of.Sum(r => r.Comparisons)} | ")
                .Append(Deviation(kind, of)).Append(" |\n");
        }

        int differ = TypedValue.All.Count(v => v.MayDiffer);
        page.Append(CultureInfo.InvariantCulture, $"""

            Not counted: {remembered} rows of the reference tables are from memory. They are tested too, in classes of other names, and
            validate nothing. The direction numbers of the Sobol sequence are held against their published file in `Driveline.Sweeps.Tests`.

            Of the tables that the copies come from, {TypedValue.All.Count} values were typed a second time by somebody who saw neither
            copy nor code: {TypedValue.All.Count(v => v.IsRead)} from a page, the others from memory;
            {(differ == 0 ? "none of them differs" : differ + " of them differ by edition")}
            (`shared/reference/second-typing`; held by `tests/Driveline.Tests/SecondTyping`).

            ## By capability and source

            Document, edition, table or page, and the copy in which it was read.


            """);
        Table(page, rows.Where(r => r.IsNamed || r.Kind == ValidationKind.SecondMethod));
        page.Append("""

            ## Where the document cannot be named

            Pages of questions, guides, makers' data and manuals without a number, an edition or a date. The arithmetic is checked;
            the figure cannot be looked up again.


            """);
        Table(page, rows.Where(r => !r.IsNamed && r.Kind != ValidationKind.SecondMethod));
        return page.ToString().Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    private static void Table(StringBuilder page, IEnumerable<ValidationRow> rows)
    {
        page.Append("| capability | source | kind | rows | largest deviation |\n|---|---|---|---|---|\n");
        foreach (IGrouping<(string Capability, string Source, ValidationKind Kind), ValidationRow> group in rows
            .GroupBy(r => (r.Capability, r.Source, r.Kind))
            .OrderBy(g => g.Key.Capability, StringComparer.Ordinal).ThenBy(g => g.Key.Kind)
            .ThenBy(g => g.Key.Source, StringComparer.Ordinal))
        {
            ValidationRow[] of = [.. group];
            string name = Kinds.Single(k => k.Kind == group.Key.Kind).Name;
            page.Append(CultureInfo.InvariantCulture,
                $"| {group.Key.Capability} | {group.Key.Source.Replace("|", "/", StringComparison.Ordinal)} | {name} | {of.Length} | ")
                .Append(Deviation(group.Key.Kind, of)).Append(" |\n");
        }
    }

    private static string Deviation(ValidationKind kind, ValidationRow[] rows)
    {
        double? largest = rows.Max(r => r.Deviation);
        return kind == ValidationKind.Contained ? "inside"
            : largest is not { } share ? "within the rounding its test states"
            : share < 1e-6 ? "below 0.0001 %"
            : (100 * share).ToString("G2", CultureInfo.InvariantCulture) + " %";
    }
}
