using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high stress or strength, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class StressBand : QuantityBand<Pressure>
{
    private StressBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "MPa";

    private protected override double PerUnit => 1e6;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static StressBand Exactly(Pressure value, Basis basis) => new(Band.Stated(Si.Pascals(value), "Pa"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static StressBand Between(Pressure low, Pressure expected, Pressure high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static StressBand Between(Pressure low, Pressure expected, Pressure high, BandBasis basis) =>
        new(Band.Stated(Si.Pascals(low), Si.Pascals(expected), Si.Pascals(high), "Pa"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static StressBand AtLeast(Pressure low, Basis basis) => new(Band.StatedAtLeast(Si.Pascals(low), "Pa"), BandBasis.Of(basis));

    internal static StressBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Pressure Of(double si) => Pressure.FromPascals(si);
}
