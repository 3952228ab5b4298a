namespace Driveline.Protection;

/// <summary>How much one bolt of a joint holds against another in the same place, end by end.</summary>
/// <remarks>
/// Weakest over weakest, expected over expected, strongest over strongest. What both share, such as area, radius and the shear ratio κ,
/// cancels; so this is narrower than the ratio of two independent pieces. It is a comparison, never a recommendation.
/// </remarks>
/// <example>SAE 5 to SAE 8 in 3/8 in: at least 150 ksi over 120 ksi, 1.25.</example>
public sealed class GradeRatio
{
    internal GradeRatio(double? low, double? expected, double? high)
    {
        Low = low;
        Expected = expected;
        High = high;
    }

    /// <summary>Weakest over weakest; null when either is not known.</summary>
    public double? Low { get; }

    /// <summary>Expected over expected; null when either is not known.</summary>
    public double? Expected { get; }

    /// <summary>Strongest over strongest; null when either has no known maximum.</summary>
    public double? High { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Low:G4} / {Expected:G4} / {High:G4}");

    internal static GradeRatio Of(Quantities.Band other, Quantities.Band fitted) =>
        new(Over(other.Low, fitted.Low), Over(other.Expected, fitted.Expected), Over(other.High, fitted.High));

    private static double? Over(double other, double fitted) =>
        fitted > 0 && !double.IsInfinity(fitted) && !double.IsInfinity(other) ? other / fitted : null;
}
