using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high time, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class TimeBand : QuantityBand
{
    private TimeBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public Duration Low => Duration.FromSeconds(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public Duration? Expected => HasExpected ? Duration.FromSeconds(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public Duration? High => IsBounded ? Duration.FromSeconds(SiBand.High) : null;

    private protected override string Unit => "s";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static TimeBand Exactly(Duration value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.Seconds(value), "Value", "s", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TimeBand Between(Duration low, Duration expected, Duration high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TimeBand Between(Duration low, Duration expected, Duration high, BandBasis basis) => new(
        new Band(
            Guard.NotNegative(Si.Seconds(low), "Low value", "s", nameof(low)),
            Guard.NotNegative(Si.Seconds(expected), "Expected value", "s", nameof(expected)),
            Guard.NotNegative(Si.Seconds(high), "High value", "s", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static TimeBand AtLeast(Duration low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.Seconds(low), "Low value", "s", nameof(low)), double.PositiveInfinity, double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static TimeBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
