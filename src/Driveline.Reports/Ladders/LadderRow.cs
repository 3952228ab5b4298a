namespace Driveline.Reports.Ladders;

/// <summary>One row of the picture. Torques in the unit shown; +∞ means no known end; no torque at all means not known.</summary>
internal sealed class LadderRow
{
    private LadderRow(LadderRowKind kind, string name, string detail, bool isKnown, double low, double expected, double high)
    {
        Kind = kind;
        Name = name;
        Detail = detail;
        IsKnown = isKnown;
        Low = low;
        Expected = expected;
        High = high;
    }

    public LadderRowKind Kind { get; }

    public string Name { get; }

    public string Detail { get; }

    public bool IsKnown { get; }

    public double Low { get; }

    public double Expected { get; }

    public double High { get; }

    public bool IsBetween => Kind is LadderRowKind.Room or LadderRowKind.Overlap or LadderRowKind.NoRoom;

    /// <summary>Its known torques.</summary>
    public IEnumerable<double> Known => IsKnown ? new[] { Low, Expected, High }.Where(v => !double.IsPositiveInfinity(v)) : [];

    public static LadderRow Band(LadderRowKind kind, string name, string detail, double low, double expected, double high) =>
        new(kind, name, detail, true, low, expected, high);

    /// <summary>A torque that nobody knows.</summary>
    public static LadderRow NotKnown(LadderRowKind kind, string name, string detail) =>
        new(kind, name, detail, false, double.NaN, double.NaN, double.NaN);

    /// <summary>Between two rows: from and to where they can be drawn.</summary>
    public static LadderRow Between(LadderRowKind kind, string name, string detail, double from, double to) =>
        new(kind, name, detail, true, from, from, to);
}
