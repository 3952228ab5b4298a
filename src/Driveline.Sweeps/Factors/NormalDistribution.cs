namespace Driveline.Sweeps.Factors;

/// <summary>Normal, by mean and standard deviation.</summary>
internal sealed class NormalDistribution(double mean, double deviation) : Distribution
{
    public override string Kind => "normal";

    public override double Low => double.NegativeInfinity;

    public override double High => double.PositiveInfinity;

    public override string Mark => FormattableString.Invariant($"normal {mean:R} {deviation:R}");

    public override double Quantile(double share) => mean + (deviation * NormalCurve.Quantile(share));
}
