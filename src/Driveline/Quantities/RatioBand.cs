using Driveline.Provenance;

namespace Driveline.Quantities;

/// <summary>Low, expected and high ratio, each with its basis. Expected and high may be unbounded (null).</summary>
public sealed class RatioBand : QuantityBand
{
    private RatioBand(Band si, BandBasis basis)
        : base(si, basis)
    {
    }

    /// <summary>The low value.</summary>
    public double Low => SiBand.Low;

    /// <summary>The expected value; null when unbounded.</summary>
    public double? Expected => HasExpected ? SiBand.Expected : null;

    /// <summary>The high value; null when unbounded.</summary>
    public double? High => IsBounded ? SiBand.High : null;

    private protected override string Unit => string.Empty;

    /// <summary>A band of one stated value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static RatioBand Exactly(double value, Basis basis) =>
        new(Band.Exactly(Guard.NotNegative(value, "Value", string.Empty, nameof(value))), BandBasis.Of(basis));

    /// <summary>A band of three stated values, both ends limits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static RatioBand Between(double low, double expected, double high, Basis basis) =>
        Between(low, expected, high, BandBasis.Of(basis));

    /// <summary>A band of three values with a basis for each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or a value is not finite.</exception>
    public static RatioBand Between(double low, double expected, double high, BandBasis basis) => new(
        new Band(
            Guard.NotNegative(low, "Low value", string.Empty, nameof(low)),
            Guard.NotNegative(expected, "Expected value", string.Empty, nameof(expected)),
            Guard.NotNegative(high, "High value", string.Empty, nameof(high))),
        basis);

    /// <summary>A band whose expected and high values are unbounded: at least this much.</summary>
    public static RatioBand AtLeast(double low, Basis basis) => new(
        new Band(Guard.NotNegative(low, "Low value", string.Empty, nameof(low)), double.PositiveInfinity, double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static RatioBand OfSi(Band si, BandBasis basis) => new(si, basis);
}
