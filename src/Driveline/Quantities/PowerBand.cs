using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high power, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class PowerBand : QuantityBand
{
    private PowerBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public Power Low => Power.FromWatts(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public Power? Expected => HasExpected ? Power.FromWatts(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public Power? High => IsBounded ? Power.FromWatts(SiBand.High) : null;

    private protected override string Unit => "kW";

    private protected override double PerUnit => 1e3;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static PowerBand Exactly(Power value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.Watts(value), "Value", "W", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static PowerBand Between(Power low, Power expected, Power high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static PowerBand Between(Power low, Power expected, Power high, BandBasis basis) => new(
        new Band(
            Guard.NotNegative(Si.Watts(low), "Low value", "W", nameof(low)),
            Guard.NotNegative(Si.Watts(expected), "Expected value", "W", nameof(expected)),
            Guard.NotNegative(Si.Watts(high), "High value", "W", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static PowerBand AtLeast(Power low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.Watts(low), "Low value", "W", nameof(low)), double.PositiveInfinity, double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static PowerBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
