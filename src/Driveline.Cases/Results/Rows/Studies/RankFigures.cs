namespace Driveline.Cases.Results;

/// <summary>Spearman's rank correlation of an output with a factor.</summary>
internal sealed class RankFigures
{
    public string Output { get; set; } = string.Empty;

    public string Factor { get; set; } = string.Empty;

    public double? Spearman { get; set; }
}
