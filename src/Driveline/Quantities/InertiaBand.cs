using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high mass moment of inertia, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class InertiaBand : QuantityBand
{
    private InertiaBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public MassMomentOfInertia Low => MassMomentOfInertia.FromKilogramSquareMeters(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public MassMomentOfInertia? Expected => HasExpected ? MassMomentOfInertia.FromKilogramSquareMeters(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public MassMomentOfInertia? High => IsBounded ? MassMomentOfInertia.FromKilogramSquareMeters(SiBand.High) : null;

    private protected override string Unit => "kg·m²";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static InertiaBand Exactly(MassMomentOfInertia value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.KilogramSquareMeters(value), "Value", "kg·m²", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static InertiaBand Between(MassMomentOfInertia low, MassMomentOfInertia expected, MassMomentOfInertia high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static InertiaBand Between(MassMomentOfInertia low, MassMomentOfInertia expected, MassMomentOfInertia high, BandBasis basis) =>
        new(
        new Band(
            Guard.NotNegative(Si.KilogramSquareMeters(low), "Low value", "kg·m²", nameof(low)),
            Guard.NotNegative(Si.KilogramSquareMeters(expected), "Expected value", "kg·m²", nameof(expected)),
            Guard.NotNegative(Si.KilogramSquareMeters(high), "High value", "kg·m²", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static InertiaBand AtLeast(MassMomentOfInertia low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.KilogramSquareMeters(low), "Low value", "kg·m²", nameof(low)), double.PositiveInfinity,
            double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static InertiaBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
