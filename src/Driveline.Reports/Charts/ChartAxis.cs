namespace Driveline.Reports.Charts;

/// <summary>An axis of a chart in the unit shown, with its words.</summary>
internal sealed class ChartAxis(double low, double high, string words)
{
    public double Low { get; } = low;

    public double High { get; } = high;

    public string Words { get; } = words;
}
