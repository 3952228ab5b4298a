using Driveline.Provenance;
using Driveline.Quantities;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;

namespace Driveline.Protection;

/// <summary>The distribution of a band: PERT between its ends, a tail beyond an interval end, a share at +∞ when unbounded.</summary>
/// <remarks>
/// Body: low + (high − low) · Beta(α, β), α = 1 + λ (e − l)/(h − l), β = 1 + λ (h − e)/(h − l).
/// An end that is a 95 % interval has 2.5 % of the specimens beyond it, falling off exponentially with the mean excess of a
/// normal distribution of the same half width; the low tail stops at 0. An end that is a limit has nothing beyond it.
/// An unbounded high end puts the shape's share at +∞ and spreads the rest up to twice the expected value less the low one.
/// A band of one value is a point. A band without an expected value has no distribution.
/// Source: the PERT form of the beta distribution (λ = 4); the tails are a convention of this library.
/// </remarks>
/// <example>PERT(0.25, 0.35, 0.55): mean 0.3667, 5 % quantile 0.2828, median 0.3627.</example>
internal sealed class BandDistribution : Distribution
{
    private static readonly Basis SharePractice = Basis.FromMemory("share of an unbounded band that lies beyond any known value");

    private readonly double low;
    private readonly double width;
    private readonly double alpha;
    private readonly double beta;
    private readonly double logBeta;
    private readonly double lowTail;
    private readonly double highTail;
    private readonly double lowScale;
    private readonly double highScale;
    private readonly double body;
    private readonly double unbounded;

    private BandDistribution(Band si, BandBasis basis, BandShape shape)
        : base(si.IsBounded ? basis.Weakest : Basis.Weakest(basis.Weakest, SharePractice))
    {
        unbounded = si.IsBounded ? 0 : shape.UnboundedShare;
        double high = si.IsBounded ? si.High : (2 * si.Expected) - si.Low;
        low = si.Low;
        width = high - low;
        if (width > 0)
        {
            alpha = 1 + (shape.Weight * (si.Expected - low) / width);
            beta = 1 + (shape.Weight * (high - si.Expected) / width);
            logBeta = SpecialFunctions.BetaLn(alpha, beta);
            bool hasLowTail = basis.LowEnd == BandEnd.Interval95 && low > 0;
            bool hasHighTail = basis.HighEnd == BandEnd.Interval95 && si.IsBounded;
            lowTail = hasLowTail ? BandShape.BeyondInterval : 0;
            highTail = hasHighTail ? BandShape.BeyondInterval : 0;
            lowScale = BandShape.TailScale * (si.Expected > low ? si.Expected - low : width);
            highScale = BandShape.TailScale * (high > si.Expected ? high - si.Expected : width);
        }

        body = 1 - unbounded - lowTail - highTail;
    }

    /// <inheritdoc/>
    public override double? Mean => unbounded > 0 ? null
        : width > 0 ? (body * (low + (width * alpha / (alpha + beta)))) + (lowTail * LowTailMean()) + (highTail * (low + width + highScale))
        : low;

    /// <inheritdoc/>
    public override double UnboundedShare => unbounded;

    internal override double Supremum => highTail > 0 ? double.PositiveInfinity : low + width;

    internal override double Atom => width > 0 ? double.NaN : low;

    internal override double AtomShare => width > 0 ? 0 : body;

    internal override IReadOnlyList<double> Breaks
    {
        get
        {
            if (!(width > 0))
            {
                return [];
            }

            var breaks = new List<double>();
            if (lowTail > 0)
            {
                breaks.Add(Math.Max(0, low - (37 * lowScale)));
            }

            breaks.Add(low);
            breaks.Add(low + width);
            if (highTail > 0)
            {
                breaks.Add(low + width + (37 * highScale));
            }

            return breaks;
        }
    }

    /// <summary>The distribution of a band with the default shape.</summary>
    /// <exception cref="InvalidOperationException">The band has no expected value.</exception>
    public static BandDistribution Of(QuantityBand band) => Of(band, BandShape.Default);

    /// <summary>The distribution of a band.</summary>
    /// <exception cref="InvalidOperationException">The band has no expected value.</exception>
    public static BandDistribution Of(QuantityBand band, BandShape shape) => TryOf(band, shape)
        ?? throw new InvalidOperationException(
            "A band without an expected value has no distribution: only that it is " + band + " is known.");

    /// <summary>The distribution of a band with the default shape; null when the band has no expected value.</summary>
    public static BandDistribution? TryOf(QuantityBand band) => TryOf(band, BandShape.Default);

    /// <summary>The distribution of a band; null when the band has no expected value.</summary>
    public static BandDistribution? TryOf(QuantityBand band, BandShape shape)
    {
        Guard.NotNull(band, nameof(band));
        Guard.NotNull(shape, nameof(shape));
        return band.HasExpected ? new BandDistribution(band.SiBand, band.Basis, shape) : null;
    }

    /// <inheritdoc/>
    public override double Cdf(double value)
    {
        if (double.IsPositiveInfinity(value))
        {
            return 1;
        }

        if (!(width > 0))
        {
            return value >= low ? body : 0;
        }

        if (value <= low)
        {
            return lowTail * LowTailCdf(value);
        }

        double t = (value - low) / width;
        return t < 1
            ? lowTail + (body * SpecialFunctions.BetaRegularized(alpha, beta, t))
            : lowTail + body + (highTail > 0 ? highTail * (1 - Math.Exp(-(value - low - width) / highScale)) : 0);
    }

    /// <inheritdoc/>
    public override double Survival(double value)
    {
        if (double.IsPositiveInfinity(value))
        {
            return 0;
        }

        if (!(width > 0))
        {
            return value < low ? 1 : unbounded;
        }

        double t = (value - low) / width;
        return t <= 0 ? 1 - (lowTail * LowTailCdf(value))
            : t < 1 ? unbounded + highTail + (body * SpecialFunctions.BetaRegularized(beta, alpha, 1 - t))
            : unbounded + (highTail > 0 ? highTail * Math.Exp(-(value - low - width) / highScale) : 0);
    }

    internal override double Density(double value)
    {
        double t = (value - low) / width;
        return t < 0 ? LowTailDensity(value)
            : t > 1 ? (highTail > 0 ? highTail / highScale * Math.Exp(-(value - low - width) / highScale) : 0)
            : body / width * Math.Exp(Power(alpha - 1, t) + Power(beta - 1, 1 - t) - logBeta);
    }

    private protected override double QuantileOf(double p)
    {
        if (p > 1 - unbounded)
        {
            return double.PositiveInfinity;
        }

        if (!(width > 0))
        {
            return low;
        }

        if (p < lowTail)
        {
            double cut = Math.Exp(-low / lowScale);
            return low + (lowScale * Math.Log(cut + (p / lowTail * (1 - cut))));
        }

        double inBody = (p - lowTail) / body;
        return inBody >= 1
            ? low + width + (highTail > 0 ? -highScale * Math.Log(Math.Min(1, (1 - p) / highTail)) : 0)
            : low + (width * BetaQuantile(inBody));
    }

    // 0 · ln 0 is 0 here: a density that is level at its end.
    private static double Power(double exponent, double x) => exponent == 0 ? 0 : exponent * Math.Log(x);

    private double BetaQuantile(double p) =>
        p <= 0 ? 0 : Brent.FindRoot(x => SpecialFunctions.BetaRegularized(alpha, beta, x) - p, 0, 1, 1e-14, 200);

    private double LowTailCdf(double value)
    {
        if (value <= 0 || lowTail == 0)
        {
            return value >= low ? 1 : 0;
        }

        double cut = Math.Exp(-low / lowScale);
        return (Math.Exp(-(low - value) / lowScale) - cut) / (1 - cut);
    }

    private double LowTailDensity(double value) => lowTail == 0 || value < 0 ? 0
        : lowTail / lowScale * Math.Exp(-(low - value) / lowScale) / (1 - Math.Exp(-low / lowScale));

    // Mean of the exponential below low, cut off at 0: low − s + low · c/(1 − c), c = exp(−low/s).
    private double LowTailMean()
    {
        double cut = Math.Exp(-low / lowScale);
        return low - lowScale + (low * cut / (1 - cut));
    }
}
