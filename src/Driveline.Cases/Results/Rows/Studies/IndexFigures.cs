namespace Driveline.Cases.Results;

/// <summary>The variance-based indices of an output by a factor, with 95 % bootstrap intervals.</summary>
internal sealed class IndexFigures
{
    public string Output { get; set; } = string.Empty;

    public string Factor { get; set; } = string.Empty;

    public double? First { get; set; }

    public double? FirstLow { get; set; }

    public double? FirstHigh { get; set; }

    public double? Total { get; set; }

    public double? TotalLow { get; set; }

    public double? TotalHigh { get; set; }
}
