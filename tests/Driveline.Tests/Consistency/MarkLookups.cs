namespace Driveline.Tests.Consistency;

/// <summary>When each mark was looked up, and what came of it: the reference table marks/looked-up.csv.</summary>
internal static class MarkLookups
{
    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceTable.Read("marks", "looked-up.csv");

    /// <summary>Date and outcome, or the outcome alone where there is nothing to look up; blank when no row tells.</summary>
    public static string Of(SourceMark mark) => RowOf(mark) is not { } row ? string.Empty
        : row.Has("date") ? row["date"] + ": " + row["outcome"]
        : row["outcome"];

    /// <summary>Rows that belong to no mark.</summary>
    public static IEnumerable<string> WithoutMark(IReadOnlyList<SourceMark> marks)
    {
        ReferenceRow?[] used = [.. marks.Select(RowOf)];
        return Rows.Where(r => !used.Contains(r)).Select(r => r["begins"]);
    }

    // The row with the longest beginning that fits.
    private static ReferenceRow? RowOf(SourceMark mark) => Rows
        .Where(r => mark.Words.StartsWith(r["begins"], StringComparison.Ordinal)).MaxBy(r => r["begins"].Length);
}
