using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>How a quantity scatters: a probability for every value. Values are in the SI unit of the quantity.</summary>
/// <remarks>
/// A share of the probability may lie at +∞ (no known upper bound) and a share at one point. Immutable and safe to share.
/// </remarks>
internal abstract class Distribution
{
    private protected Distribution(Basis basis) => Basis = Guard.NotNull(basis, nameof(basis));

    /// <summary>The weakest basis of the numbers it was made from.</summary>
    public Basis Basis { get; }

    /// <summary>Mean value; null when a share of the probability has no upper bound.</summary>
    public abstract double? Mean { get; }

    /// <summary>Share of the probability without an upper bound, 0 to 1.</summary>
    public virtual double UnboundedShare => 0;

    /// <summary>The value that nothing finite exceeds; +∞ when there is a tail.</summary>
    internal abstract double Supremum { get; }

    /// <summary>Ascending; the density is smooth between neighbours and all but 1e-16 of it lies between the first and the last.</summary>
    internal abstract IReadOnlyList<double> Breaks { get; }

    /// <summary>The point that carries a share of its own; NaN when there is none.</summary>
    internal virtual double Atom => double.NaN;

    /// <summary>The share that lies at the point.</summary>
    internal virtual double AtomShare => 0;

    /// <summary>Probability that a specimen is at or below the value.</summary>
    /// <param name="value">Value in SI; not NaN.</param>
    public abstract double Cdf(double value);

    /// <summary>Probability that a specimen is above the value, exact also where it is tiny.</summary>
    /// <param name="value">Value in SI; not NaN.</param>
    public abstract double Survival(double value);

    /// <summary>The value at or below which a share p of the specimens lies; +∞ when that share has no upper bound.</summary>
    /// <param name="p">Share, above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">p is not above 0 and below 1.</exception>
    public double Quantile(double p) => p > 0 && p < 1
        ? QuantileOf(p)
        : throw Guard.OutOfRange("Share of a quantile", "above 0 and below 1", p, string.Empty, nameof(p));

    internal abstract double Density(double value);

    /// <summary>Probability that a specimen is at or above the value.</summary>
    internal double AtLeast(double value) => Survival(value) + (value.Equals(Atom) ? AtomShare : 0);

    private protected abstract double QuantileOf(double p);
}
