namespace Driveline.Sweeps.Factors;

/// <summary>Lognormal, by mean and standard deviation of the value itself, not of its logarithm.</summary>
/// <remarks>σ² = ln(1 + s²/m²), μ = ln m − σ²/2.</remarks>
internal sealed class LognormalDistribution : Distribution
{
    private readonly double mu;
    private readonly double sigma;

    public LognormalDistribution(double mean, double deviation)
    {
        double ratio = deviation / mean;
        double variance = Math.Log(1 + (ratio * ratio));
        mu = Math.Log(mean) - (variance / 2);
        sigma = Math.Sqrt(variance);
        Mark = FormattableString.Invariant($"lognormal {mean:R} {deviation:R}");
    }

    public override string Kind => "lognormal";

    public override double Low => 0;

    public override double High => double.PositiveInfinity;

    public override string Mark { get; }

    public override double Quantile(double share) => Math.Exp(mu + (sigma * NormalCurve.Quantile(share)));
}
