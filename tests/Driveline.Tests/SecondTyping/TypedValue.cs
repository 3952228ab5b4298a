using System.Globalization;

namespace Driveline.Tests.SecondTyping;

/// <summary>One value of a reference table, typed a second time, beside the first.</summary>
public sealed class TypedValue
{
    private readonly ReferenceRow row;

    internal TypedValue(ReferenceRow row) => this.row = row;

    public static IReadOnlyList<TypedValue> All { get; } =
        [.. ReferenceTable.Read("second-typing", "values.csv").Where(r => r.Cells.Count > 1).Select(r => new TypedValue(r))];

    public string Table => row["table"];

    public string Place => row["row"] + ", " + row["column"];

    public string Second => row["value"];

    public bool IsRead => row["evidence"] == "page";

    public bool MayDiffer => row.Has("differs");

    /// <summary>The row of the first copy; it must be one.</summary>
    public ReferenceRow FirstRow()
    {
        string[] place = Table.Split('/');
        (string Column, string Cell)[] keys = [.. row["row"].Split("; ").Select(k => (k[..k.IndexOf('=')], k[(k.IndexOf('=') + 1)..]))];
        return Assert.Single(ReferenceTable.Read(place[0], place[1]), r => keys.All(k => Matches(r[k.Column], k.Cell)));
    }

    /// <summary>True when both copies say the same: as numbers where both are numbers.</summary>
    public bool Agrees()
    {
        string first = FirstRow()[row["column"]];
        return TryNumber(first, out double one) && TryNumber(Second, out double other)
            ? Math.Abs((other * (row.Has("times") ? row.Number("times") : 1)) - one) <= 1e-9 * Math.Max(1, Math.Abs(one))
            : first == Second;
    }

    private static bool Matches(string cell, string key) =>
        key.EndsWith('*') ? cell.StartsWith(key[..^1], StringComparison.Ordinal) : cell == key;

    private static bool TryNumber(string text, out double value) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out value);
}
