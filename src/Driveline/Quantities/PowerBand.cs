using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high power, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class PowerBand : QuantityBand<Power>
{
    private PowerBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "kW";

    private protected override double PerUnit => 1e3;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static PowerBand Exactly(Power value, Basis basis) => new(Band.Stated(Si.Watts(value), "W"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static PowerBand Between(Power low, Power expected, Power high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static PowerBand Between(Power low, Power expected, Power high, BandBasis basis) =>
        new(Band.Stated(Si.Watts(low), Si.Watts(expected), Si.Watts(high), "W"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static PowerBand AtLeast(Power low, Basis basis) => new(Band.StatedAtLeast(Si.Watts(low), "W"), BandBasis.Of(basis));

    internal static PowerBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Power Of(double si) => Power.FromWatts(si);
}
