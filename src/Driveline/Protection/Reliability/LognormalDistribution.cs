using Driveline.Provenance;
using Driveline.Quantities;
using MathNet.Numerics;

namespace Driveline.Protection;

/// <summary>A lognormal distribution, for a positive quantity whose mean and coefficient of variation are measured.</summary>
/// <remarks>σ² = ln(1 + C²), μ = ln m − σ²/2, F(x) = Φ((ln x − μ)/σ), with m the mean and C the coefficient of variation.</remarks>
/// <example>Mean 100, C = 0.10: median 99.50, 95 % quantile 117.2.</example>
internal sealed class LognormalDistribution : Distribution
{
    private readonly double mean;
    private readonly double mu;
    private readonly double sigma;

    private LognormalDistribution(double mean, double variation, Basis basis)
        : base(basis)
    {
        this.mean = mean;
        double variance = Math.Log(1 + (variation * variation));
        sigma = Math.Sqrt(variance);
        mu = Math.Log(mean) - (variance / 2);
    }

    /// <inheritdoc/>
    public override double? Mean => mean;

    internal override double Supremum => double.PositiveInfinity;

    internal override IReadOnlyList<double> Breaks => [.. new[] { -9.0, -3, 0, 3, 9 }.Select(z => Math.Exp(mu + (z * sigma)))];

    /// <summary>A lognormal distribution.</summary>
    /// <param name="mean">Mean in SI; above 0.</param>
    /// <param name="variation">Coefficient of variation (standard deviation over mean); above 0.</param>
    /// <param name="basis">Where the two come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is zero, negative or not finite.</exception>
    public static LognormalDistribution Of(double mean, double variation, Basis basis) => new(
        Guard.Positive(mean, "Mean", string.Empty, nameof(mean)),
        Guard.Positive(variation, "Coefficient of variation", string.Empty, nameof(variation)),
        basis);

    /// <inheritdoc/>
    public override double Cdf(double value) => value > 0 ? NormalDistribution.Phi((Math.Log(value) - mu) / sigma) : 0;

    /// <inheritdoc/>
    public override double Survival(double value) => value > 0 ? NormalDistribution.Phi((mu - Math.Log(value)) / sigma) : 1;

    internal override double Density(double value)
    {
        if (!(value > 0))
        {
            return 0;
        }

        double z = (Math.Log(value) - mu) / sigma;
        return Math.Exp(-0.5 * z * z) / (value * sigma * Constants.Sqrt2Pi);
    }

    private protected override double QuantileOf(double p) => Math.Exp(mu + (sigma * NormalDistribution.PhiInverse(p)));
}
