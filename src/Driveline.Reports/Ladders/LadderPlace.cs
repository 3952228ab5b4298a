namespace Driveline.Reports.Ladders;

/// <summary>A row with its words in lines and its place below the top of the rows.</summary>
internal readonly struct LadderPlace(
    LadderRow row, IReadOnlyList<string> name, IReadOnlyList<string> detail, double top, double height, double bar)
{
    public LadderRow Row { get; } = row;

    public IReadOnlyList<string> Name { get; } = name;

    public IReadOnlyList<string> Detail { get; } = detail;

    public double Top { get; } = top;

    public double Height { get; } = height;

    /// <summary>Top of its bar below its own top.</summary>
    public double Bar { get; } = bar;
}
