using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high time, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class TimeBand : QuantityBand<Duration>
{
    private TimeBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "s";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static TimeBand Exactly(Duration value, Basis basis) => new(Band.Stated(Si.Seconds(value), "s"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TimeBand Between(Duration low, Duration expected, Duration high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static TimeBand Between(Duration low, Duration expected, Duration high, BandBasis basis) =>
        new(Band.Stated(Si.Seconds(low), Si.Seconds(expected), Si.Seconds(high), "s"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static TimeBand AtLeast(Duration low, Basis basis) => new(Band.StatedAtLeast(Si.Seconds(low), "s"), BandBasis.Of(basis));

    internal static TimeBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Duration Of(double si) => Duration.FromSeconds(si);
}
