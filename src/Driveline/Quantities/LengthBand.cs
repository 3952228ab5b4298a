using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high length, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class LengthBand : QuantityBand<Length>
{
    private LengthBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "mm";

    private protected override double PerUnit => 1e-3;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static LengthBand Exactly(Length value, Basis basis) => new(Band.Stated(Si.Meters(value), "m"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static LengthBand Between(Length low, Length expected, Length high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static LengthBand Between(Length low, Length expected, Length high, BandBasis basis) =>
        new(Band.Stated(Si.Meters(low), Si.Meters(expected), Si.Meters(high), "m"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static LengthBand AtLeast(Length low, Basis basis) => new(Band.StatedAtLeast(Si.Meters(low), "m"), BandBasis.Of(basis));

    internal static LengthBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Length Of(double si) => Length.FromMeters(si);
}
