using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>What all options of one owner share: years, discount rate, currency, and what an hour is worth. Immutable.</summary>
public sealed class OwnershipTerms
{
    private OwnershipTerms(string currency, int years, double discountRate, MoneyBand hour, MoneyBand downtimeHour)
    {
        Currency = currency;
        Years = years;
        DiscountRate = discountRate;
        HourOfWork = hour;
        HourOfDowntime = downtimeHour;
    }

    /// <summary>The caller's currency, e.g. "USD"; only a label.</summary>
    public string Currency { get; }

    /// <summary>Years looked at.</summary>
    public int Years { get; }

    /// <summary>Discount rate a year; 0.05 is 5 %.</summary>
    public double DiscountRate { get; }

    /// <summary>What an hour of the owner's or mechanic's work is worth.</summary>
    public MoneyBand HourOfWork { get; }

    /// <summary>What an hour is worth in which the machine stands.</summary>
    public MoneyBand HourOfDowntime { get; }

    /// <summary>Terms without any value of time yet.</summary>
    /// <param name="currency">Label of the currency.</param>
    /// <param name="years">Years looked at, 1 to 50.</param>
    /// <param name="discountRate">Discount rate a year, 0 to 0.5.</param>
    /// <exception cref="ArgumentException">
    /// The currency is blank, the years are not from 1 to 50, or the rate is not from 0 to 0.5.
    /// </exception>
    public static OwnershipTerms Of(string currency, int years, double discountRate) => new(
        Guard.NotBlank(currency, "Currency", nameof(currency)),
        Guard.Within(years, 1, 50, "Years", nameof(years)),
        Guard.Within(discountRate, 0, 0.5, "Discount rate a year", string.Empty, nameof(discountRate)),
        MoneyBand.Nothing,
        MoneyBand.Nothing);

    /// <summary>The same terms with the value of an hour of work.</summary>
    public OwnershipTerms WithHourOfWork(MoneyBand value) =>
        new(Currency, Years, DiscountRate, Guard.NotNull(value, nameof(value)), HourOfDowntime);

    /// <summary>The same terms with the value of an hour of downtime.</summary>
    public OwnershipTerms WithHourOfDowntime(MoneyBand value) =>
        new(Currency, Years, DiscountRate, HourOfWork, Guard.NotNull(value, nameof(value)));

    /// <summary>The years, the currency and the rate in one line of English.</summary>
    public override string ToString() => FormattableString.Invariant($"{Years} years in {Currency} at {DiscountRate:P1} a year");

    /// <summary>Discount factor of a payment at the end of a year: (1 + r)^−k.</summary>
    /// <example>5 %, year 3: 0.8638.</example>
    internal double Discount(int year) => Math.Pow(1 + DiscountRate, -year);
}
