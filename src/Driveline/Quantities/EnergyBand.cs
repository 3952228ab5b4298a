using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high energy, each with its basis. Expected and high may be unbounded (null).</summary>
internal sealed class EnergyBand : QuantityBand<Energy>
{
    private EnergyBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "kJ";

    private protected override double PerUnit => 1e3;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static EnergyBand Exactly(Energy value, Basis basis) => new(Band.Stated(Si.Joules(value), "J"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static EnergyBand Between(Energy low, Energy expected, Energy high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static EnergyBand Between(Energy low, Energy expected, Energy high, BandBasis basis) =>
        new(Band.Stated(Si.Joules(low), Si.Joules(expected), Si.Joules(high), "J"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static EnergyBand AtLeast(Energy low, Basis basis) => new(Band.StatedAtLeast(Si.Joules(low), "J"), BandBasis.Of(basis));

    internal static EnergyBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Energy Of(double si) => Energy.FromJoules(si);
}
