using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high mass moment of inertia, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class InertiaBand : QuantityBand<MassMomentOfInertia>
{
    private InertiaBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "kg·m²";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static InertiaBand Exactly(MassMomentOfInertia value, Basis basis) =>
        new(Band.Stated(Si.KilogramSquareMeters(value), "kg·m²"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static InertiaBand Between(MassMomentOfInertia low, MassMomentOfInertia expected, MassMomentOfInertia high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static InertiaBand Between(MassMomentOfInertia low, MassMomentOfInertia expected, MassMomentOfInertia high, BandBasis basis) =>
        new(Band.Stated(Si.KilogramSquareMeters(low), Si.KilogramSquareMeters(expected), Si.KilogramSquareMeters(high), "kg·m²"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static InertiaBand AtLeast(MassMomentOfInertia low, Basis basis) =>
        new(Band.StatedAtLeast(Si.KilogramSquareMeters(low), "kg·m²"), BandBasis.Of(basis));

    internal static InertiaBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override MassMomentOfInertia Of(double si) => MassMomentOfInertia.FromKilogramSquareMeters(si);
}
