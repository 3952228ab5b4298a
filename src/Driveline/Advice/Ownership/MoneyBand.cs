using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>
/// Low, expected and high amount of money in the caller's currency, each with its basis. Expected and high may be unbounded (null).
/// </summary>
public sealed class MoneyBand : QuantityBand<double>
{
    /// <summary>Nothing, as stated.</summary>
    public static readonly MoneyBand Nothing = Exactly(0, Provenance.Basis.Given("no cost"));

    private MoneyBand(Band amounts, BandBasis basis)
        : base(amounts, basis)
    {
    }

    private protected override string Unit => "money";

    /// <summary>A band of one stated amount; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative or not finite.</exception>
    public static MoneyBand Exactly(double amount, Basis basis) => Between(amount, amount, amount, basis);

    /// <summary>A band of three stated amounts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 0 ≤ low ≤ expected ≤ high, or an amount is not finite.</exception>
    public static MoneyBand Between(double low, double expected, double high, Basis basis) =>
        new(Band.Stated(low, expected, high, string.Empty), BandBasis.Of(basis));

    /// <summary>At least this much; expected and high are not known.</summary>
    public static MoneyBand AtLeast(double low, Basis basis) => new(Band.StatedAtLeast(low, string.Empty), BandBasis.Of(basis));

    internal static MoneyBand OfSi(Band amounts, BandBasis basis) => new(amounts, basis);

    private protected override double Of(double si) => si;
}
