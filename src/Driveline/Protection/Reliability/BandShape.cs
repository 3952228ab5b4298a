using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>How a band is turned into a distribution. Immutable; the default is stated with each member.</summary>
internal sealed class BandShape
{
    /// <summary>Weight 4, a quarter of an unbounded band without a bound.</summary>
    public static readonly BandShape Default = new(4, 0.25);

    /// <summary>Share of the specimens beyond an end that is a 95 % interval: half of the 5 % outside.</summary>
    internal const double BeyondInterval = 0.025;

    /// <summary>
    /// Mean excess beyond a 95 % interval end over the distance from the expected value to that end: that of a normal
    /// distribution, (φ(1.95996)/0.025 − 1.95996) / 1.95996 = (2.33780 − 1.95996) / 1.95996.
    /// </summary>
    internal const double TailScale = 0.192779;

    private BandShape(double weight, double unboundedShare)
    {
        Weight = weight;
        UnboundedShare = unboundedShare;
    }

    /// <summary>Weight λ of the expected value in the PERT distribution; 4 by default, 0 gives every value the same chance.</summary>
    public double Weight { get; }

    /// <summary>Share at +∞ of a band whose high end is unbounded; 0.25 by default, a guess nobody has checked.</summary>
    public double UnboundedShare { get; }

    /// <summary>The same shape with another weight; 0 to 100.</summary>
    public BandShape WithWeight(double weight) =>
        new(Guard.Within(weight, 0, 100, "Weight of the expected value", string.Empty, nameof(weight)), UnboundedShare);

    /// <summary>The same shape with another share at +∞ for an unbounded band; 0 to 1.</summary>
    public BandShape WithUnboundedShare(double share) =>
        new(Weight, Guard.Within(share, 0, 1, "Share without an upper bound", string.Empty, nameof(share)));
}
