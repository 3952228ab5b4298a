using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high force, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class ForceBand : QuantityBand<Force>
{
    private ForceBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => "N";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static ForceBand Exactly(Force value, Basis basis) => new(Band.Stated(Si.Newtons(value), "N"), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static ForceBand Between(Force low, Force expected, Force high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static ForceBand Between(Force low, Force expected, Force high, BandBasis basis) =>
        new(Band.Stated(Si.Newtons(low), Si.Newtons(expected), Si.Newtons(high), "N"), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static ForceBand AtLeast(Force low, Basis basis) => new(Band.StatedAtLeast(Si.Newtons(low), "N"), BandBasis.Of(basis));

    internal static ForceBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override Force Of(double si) => Force.FromNewtons(si);
}
