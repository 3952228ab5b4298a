namespace Driveline.Cases.Results;

/// <summary>How an output is spread over the rows.</summary>
internal sealed class QuantileFigures
{
    public double? P05 { get; set; }

    public double? P50 { get; set; }

    public double? P95 { get; set; }

    public double? Mean { get; set; }

    public double? StandardDeviation { get; set; }

    public long NotKnown { get; set; }

    public bool IsExact { get; set; } = true;
}
