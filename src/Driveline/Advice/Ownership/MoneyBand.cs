using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>
/// Low, expected and high amount of money in the caller's currency, each with its basis. Expected and high may be unbounded (null).
/// </summary>
public sealed class MoneyBand : QuantityBand
{
    /// <summary>Nothing, as stated.</summary>
    public static readonly MoneyBand Nothing = Exactly(0, Provenance.Basis.Given("no cost"));

    private MoneyBand(Band amounts, BandBasis basis)
        : base(amounts, basis)
    {
    }

    /// <summary>The low amount.</summary>
    public double Low => SiBand.Low;

    /// <summary>The expected amount; null when unbounded.</summary>
    public double? Expected => HasExpected ? SiBand.Expected : null;

    /// <summary>The high amount; null when unbounded.</summary>
    public double? High => IsBounded ? SiBand.High : null;

    private protected override string Unit => "money";

    /// <summary>A band of one stated amount; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not finite.</exception>
    public static MoneyBand Exactly(double amount, Basis basis) => Between(amount, amount, amount, basis);

    /// <summary>A band of three stated amounts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or an amount is not finite.</exception>
    public static MoneyBand Between(double low, double expected, double high, Basis basis) => new(
        new Band(
            Guard.NotNegative(low, "Low amount", string.Empty, nameof(low)),
            Guard.NotNegative(expected, "Expected amount", string.Empty, nameof(expected)),
            Guard.NotNegative(high, "High amount", string.Empty, nameof(high))),
        BandBasis.Of(basis));

    /// <summary>At least this much; expected and high are not known.</summary>
    public static MoneyBand AtLeast(double low, Basis basis) => new(
        new Band(Guard.NotNegative(low, "Low amount", string.Empty, nameof(low)), double.PositiveInfinity, double.PositiveInfinity),
        BandBasis.Of(basis));

    internal static MoneyBand OfSi(Band amounts, BandBasis basis) => new(amounts, basis);
}
