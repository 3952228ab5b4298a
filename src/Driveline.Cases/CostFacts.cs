using Driveline.Advice;
using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>What the owner's options cost over the years, all amounts in one currency of choice.</summary>
public sealed class CostFacts : CaseFacts
{
    internal CostFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static CostFacts Empty { get; } = new(CostMembers.Table.NoValues());

    /// <summary>Name of the currency; only a label. Null when not known.</summary>
    public string? Currency => Reference<string>(CostMembers.Currency);

    /// <summary>The same with another <see cref="Currency"/>.</summary>
    public CostFacts WithCurrency(string? value) => new(Set(CostMembers.Currency, value));

    /// <summary>Years looked at; 10 when left out. Permitted: [1; 50]. Null when not known.</summary>
    public int? Years => Value<int>(CostMembers.Years);

    /// <summary>The same with another <see cref="Years"/>.</summary>
    public CostFacts WithYears(int? value) => new(Set(CostMembers.Years, value));

    /// <summary>Discount rate a year; 0 when left out. Permitted: [0; 0.5]. Null when not known.</summary>
    public double? DiscountRate => Si(CostMembers.DiscountRate);

    /// <summary>The same with another <see cref="DiscountRate"/>.</summary>
    public CostFacts WithDiscountRate(double? value) => new(Set(CostMembers.DiscountRate, value));

    /// <summary>What an hour of the owner's or mechanic's work is worth. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? HourOfWork => Reference<MoneyBand>(CostMembers.HourOfWork);

    /// <summary>The same with another <see cref="HourOfWork"/>.</summary>
    public CostFacts WithHourOfWork(MoneyBand? value) => new(Set(CostMembers.HourOfWork, value));

    /// <summary>What an hour is worth in which the machine stands. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? HourOfDowntime => Reference<MoneyBand>(CostMembers.HourOfDowntime);

    /// <summary>The same with another <see cref="HourOfDowntime"/>.</summary>
    public CostFacts WithHourOfDowntime(MoneyBand? value) => new(Set(CostMembers.HourOfDowntime, value));

    /// <summary>Price of the shear bolt; an option may state another. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? BoltPrice => Reference<MoneyBand>(CostMembers.BoltPrice);

    /// <summary>The same with another <see cref="BoltPrice"/>.</summary>
    public CostFacts WithBoltPrice(MoneyBand? value) => new(Set(CostMembers.BoltPrice, value));

    /// <summary>What the owner may do.</summary>
    public IReadOnlyList<CostOptionFacts> Options => Reference<FactList<CostOptionFacts>>(CostMembers.Options) ?? FactList<CostOptionFacts>.Empty;

    /// <summary>The same with another <see cref="Options"/>.</summary>
    public CostFacts WithOptions(IEnumerable<CostOptionFacts>? value) => new(Set(CostMembers.Options, FactList<CostOptionFacts>.Of(value)));

    internal override MemberTable Table => CostMembers.Table;
}
