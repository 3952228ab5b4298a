using Driveline.Provenance;

namespace Driveline.Quantities;

/// <summary>Low, expected and high ratio, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class RatioBand : QuantityBand<double>
{
    private RatioBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    private protected override string Unit => string.Empty;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static RatioBand Exactly(double value, Basis basis) =>
        new(Band.Stated(value, string.Empty), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static RatioBand Between(double low, double expected, double high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static RatioBand Between(double low, double expected, double high, BandBasis basis) =>
        new(Band.Stated(low, expected, high, string.Empty), basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static RatioBand AtLeast(double low, Basis basis) => new(Band.StatedAtLeast(low, string.Empty), BandBasis.Of(basis));

    internal static RatioBand OfSi(Band si, BandBasis basis) => new(si, basis);

    private protected override double Of(double si) => si;
}
