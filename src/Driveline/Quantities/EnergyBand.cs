using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high energy, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class EnergyBand : QuantityBand
{
    private EnergyBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public Energy Low => Energy.FromJoules(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public Energy? Expected => HasExpected ? Energy.FromJoules(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public Energy? High => IsBounded ? Energy.FromJoules(SiBand.High) : null;

    private protected override string Unit => "kJ";

    private protected override double PerUnit => 1e3;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static EnergyBand Exactly(Energy value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.Joules(value), "Value", "J", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static EnergyBand Between(Energy low, Energy expected, Energy high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static EnergyBand Between(Energy low, Energy expected, Energy high, BandBasis basis) => new(
        new Band(
            Guard.NotNegative(Si.Joules(low), "Low value", "J", nameof(low)),
            Guard.NotNegative(Si.Joules(expected), "Expected value", "J", nameof(expected)),
            Guard.NotNegative(Si.Joules(high), "High value", "J", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static EnergyBand AtLeast(Energy low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.Joules(low), "Low value", "J", nameof(low)), double.PositiveInfinity, double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static EnergyBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
