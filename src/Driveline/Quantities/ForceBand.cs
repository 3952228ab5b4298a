using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Quantities;

/// <summary>Low, expected and high force, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class ForceBand : QuantityBand
{
    private ForceBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public Force Low => Force.FromNewtons(SiBand.Low);

    /// <summary>The expected value; null when unbounded.</summary>
    public Force? Expected => HasExpected ? Force.FromNewtons(SiBand.Expected) : null;

    /// <summary>The high value; null when unbounded.</summary>
    public Force? High => IsBounded ? Force.FromNewtons(SiBand.High) : null;

    private protected override string Unit => "N";

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static ForceBand Exactly(Force value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(Si.Newtons(value), "Value", "N", nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static ForceBand Between(Force low, Force expected, Force high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static ForceBand Between(Force low, Force expected, Force high, BandBasis basis) => new(
        new Band(
            Guard.NotNegative(Si.Newtons(low), "Low value", "N", nameof(low)),
            Guard.NotNegative(Si.Newtons(expected), "Expected value", "N", nameof(expected)),
            Guard.NotNegative(Si.Newtons(high), "High value", "N", nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static ForceBand AtLeast(Force low, Basis basis) => new(
        new Band(Guard.NotNegative(Si.Newtons(low), "Low value", "N", nameof(low)), double.PositiveInfinity, double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static ForceBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
