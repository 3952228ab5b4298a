using Driveline.Cases.Results;

namespace Driveline.Sweeps;

/// <summary>
/// Shares of an output's variance that a factor makes, with 95 % bootstrap intervals; null when the output does not vary.
/// </summary>
public sealed class SensitivityIndex
{
    private readonly IndexFigures figures;

    internal SensitivityIndex(IndexFigures figures) => this.figures = figures;

    /// <summary>The output.</summary>
    public string Output => figures.Output;

    /// <summary>The factor.</summary>
    public string Factor => figures.Factor;

    /// <summary>Share that the factor makes alone.</summary>
    public double? First => figures.First;

    /// <summary>Low end of its interval.</summary>
    public double? FirstLow => figures.FirstLow;

    /// <summary>High end of its interval.</summary>
    public double? FirstHigh => figures.FirstHigh;

    /// <summary>Share that it makes alone and together with others.</summary>
    public double? Total => figures.Total;

    /// <summary>Low end of its interval.</summary>
    public double? TotalLow => figures.TotalLow;

    /// <summary>High end of its interval.</summary>
    public double? TotalHigh => figures.TotalHigh;

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Output} by {Factor}: first {First:F3}, total {Total:F3}");
}
