using Driveline.Provenance;
using Driveline.Quantities;
using MathNet.Numerics;

namespace Driveline.Protection;

/// <summary>A normal distribution, for a quantity whose mean and standard deviation are measured.</summary>
/// <remarks>F(x) = Φ((x − m)/s). Its low tail reaches below 0; use it where m is several s above 0.</remarks>
internal sealed class NormalDistribution : Distribution
{
    private readonly double mean;
    private readonly double sd;

    private NormalDistribution(double mean, double sd, Basis basis)
        : base(basis)
    {
        this.mean = mean;
        this.sd = sd;
    }

    /// <inheritdoc/>
    public override double? Mean => mean;

    /// <summary>Standard deviation, in the SI unit of the quantity.</summary>
    public double StandardDeviation => sd;

    internal override double Supremum => double.PositiveInfinity;

    internal override IReadOnlyList<double> Breaks => [mean - (9 * sd), mean - (3 * sd), mean, mean + (3 * sd), mean + (9 * sd)];

    /// <summary>A normal distribution.</summary>
    /// <param name="mean">Mean in SI; above 0.</param>
    /// <param name="standardDeviation">Standard deviation in SI; above 0.</param>
    /// <param name="basis">Where the two come from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is zero, negative or not finite.</exception>
    public static NormalDistribution Of(double mean, double standardDeviation, Basis basis) => new(
        Guard.Positive(mean, "Mean", string.Empty, nameof(mean)),
        Guard.Positive(standardDeviation, "Standard deviation", string.Empty, nameof(standardDeviation)),
        basis);

    /// <inheritdoc/>
    public override double Cdf(double value) => Phi((value - mean) / sd);

    /// <inheritdoc/>
    public override double Survival(double value) => Phi((mean - value) / sd);

    /// <summary>Φ(z), the standard normal distribution.</summary>
    internal static double Phi(double z) => 0.5 * SpecialFunctions.Erfc(-z / Constants.Sqrt2);

    /// <summary>Φ⁻¹(p).</summary>
    internal static double PhiInverse(double p) => -Constants.Sqrt2 * SpecialFunctions.ErfcInv(2 * p);

    internal override double Density(double value)
    {
        double z = (value - mean) / sd;
        return Math.Exp(-0.5 * z * z) / (sd * Constants.Sqrt2Pi);
    }

    private protected override double QuantileOf(double p) => mean + (sd * PhiInverse(p));
}
