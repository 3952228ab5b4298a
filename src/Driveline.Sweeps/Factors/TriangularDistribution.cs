namespace Driveline.Sweeps.Factors;

/// <summary>Triangular, by low, most likely and high.</summary>
internal sealed class TriangularDistribution(double low, double mode, double high) : Distribution
{
    private readonly double turn = (mode - low) / (high - low);

    public override string Kind => "triangular";

    public override double Low => low;

    public override double High => high;

    public override string Mark => FormattableString.Invariant($"triangular {low:R} {mode:R} {high:R}");

    public override double Quantile(double share) => share < turn
        ? low + Math.Sqrt(share * (high - low) * (mode - low))
        : high - Math.Sqrt((1 - share) * (high - low) * (high - mode));
}
