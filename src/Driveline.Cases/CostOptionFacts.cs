using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>One thing the owner may do. What is left out costs nothing.</summary>
public sealed class CostOptionFacts : CaseFacts
{
    internal CostOptionFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static CostOptionFacts Empty { get; } = new(CostOptionMembers.Table.NoValues());

    /// <summary>What you call it. Null when not known.</summary>
    public string? Name => Reference<string>(CostOptionMembers.Name);

    /// <summary>The same with another <see cref="Name"/>.</summary>
    public CostOptionFacts WithName(string? value) => new(Set(CostOptionMembers.Name, value));

    /// <summary>What it is.</summary>
    public OptionKind Kind => Value<OptionKind>(CostOptionMembers.Kind) ?? default;

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    public CostOptionFacts WithKind(OptionKind value) => new(Set(CostOptionMembers.Kind, value == default ? null : value));

    /// <summary>Price now: kit, machine, difference of price. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? Outlay => Reference<MoneyBand>(CostOptionMembers.Outlay);

    /// <summary>The same with another <see cref="Outlay"/>.</summary>
    public CostOptionFacts WithOutlay(MoneyBand? value) => new(Set(CostOptionMembers.Outlay, value));

    /// <summary>What comes back now, such as the old machine's price. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? Proceeds => Reference<MoneyBand>(CostOptionMembers.Proceeds);

    /// <summary>The same with another <see cref="Proceeds"/>.</summary>
    public CostOptionFacts WithProceeds(MoneyBand? value) => new(Set(CostOptionMembers.Proceeds, value));

    /// <summary>Bolts broken a year. Permitted: [0; 100000]. Null when not known.</summary>
    public RatioBand? BreaksPerYear => Reference<RatioBand>(CostOptionMembers.BreaksPerYear);

    /// <summary>The same with another <see cref="BreaksPerYear"/>.</summary>
    public CostOptionFacts WithBreaksPerYear(RatioBand? value) => new(Set(CostOptionMembers.BreaksPerYear, value));

    /// <summary>Price of its bolt. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? BoltPrice => Reference<MoneyBand>(CostOptionMembers.BoltPrice);

    /// <summary>The same with another <see cref="BoltPrice"/>.</summary>
    public CostOptionFacts WithBoltPrice(MoneyBand? value) => new(Set(CostOptionMembers.BoltPrice, value));

    /// <summary>How its bolt is reached, which decides the minutes of a change.</summary>
    public BoltAccess Access => Value<BoltAccess>(CostOptionMembers.Access) ?? default;

    /// <summary>The same with another <see cref="Access"/>.</summary>
    public CostOptionFacts WithAccess(BoltAccess value) => new(Set(CostOptionMembers.Access, value == default ? null : value));

    /// <summary>Minutes a change takes, where somebody has timed it. Permitted: [0; 10000]. Null when not known.</summary>
    public RatioBand? MinutesPerChange => Reference<RatioBand>(CostOptionMembers.MinutesPerChange);

    /// <summary>The same with another <see cref="MinutesPerChange"/>.</summary>
    public CostOptionFacts WithMinutesPerChange(RatioBand? value) => new(Set(CostOptionMembers.MinutesPerChange, value));

    /// <summary>Parts and fees of the yearly service. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? YearlyService => Reference<MoneyBand>(CostOptionMembers.YearlyService);

    /// <summary>The same with another <see cref="YearlyService"/>.</summary>
    public CostOptionFacts WithYearlyService(MoneyBand? value) => new(Set(CostOptionMembers.YearlyService, value));

    /// <summary>Minutes of the yearly service. Permitted: [0; 10000]. Null when not known.</summary>
    public RatioBand? ServiceMinutes => Reference<RatioBand>(CostOptionMembers.ServiceMinutes);

    /// <summary>The same with another <see cref="ServiceMinutes"/>.</summary>
    public CostOptionFacts WithServiceMinutes(RatioBand? value) => new(Set(CostOptionMembers.ServiceMinutes, value));

    /// <summary>Price of a set of facings. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? FacingSet => Reference<MoneyBand>(CostOptionMembers.FacingSet);

    /// <summary>The same with another <see cref="FacingSet"/>.</summary>
    public CostOptionFacts WithFacingSet(MoneyBand? value) => new(Set(CostOptionMembers.FacingSet, value));

    /// <summary>Sets of facings worn a year. Permitted: [0; 100]. Null when not known.</summary>
    public RatioBand? FacingSetsPerYear => Reference<RatioBand>(CostOptionMembers.FacingSetsPerYear);

    /// <summary>The same with another <see cref="FacingSetsPerYear"/>.</summary>
    public CostOptionFacts WithFacingSetsPerYear(RatioBand? value) => new(Set(CostOptionMembers.FacingSetsPerYear, value));

    /// <summary>Overloads a year that would damage an unprotected machine. Permitted: [0; 100000]. Null when not known.</summary>
    public RatioBand? OverloadsPerYear => Reference<RatioBand>(CostOptionMembers.OverloadsPerYear);

    /// <summary>The same with another <see cref="OverloadsPerYear"/>.</summary>
    public CostOptionFacts WithOverloadsPerYear(RatioBand? value) => new(Set(CostOptionMembers.OverloadsPerYear, value));

    /// <summary>Share of overloads at which the protection fails though in good order. Permitted: [0; 1]. Null when not known.</summary>
    public RatioBand? FailsToProtect => Reference<RatioBand>(CostOptionMembers.FailsToProtect);

    /// <summary>The same with another <see cref="FailsToProtect"/>.</summary>
    public CostOptionFacts WithFailsToProtect(RatioBand? value) => new(Set(CostOptionMembers.FailsToProtect, value));

    /// <summary>Cost of one damage when the protection fails. Permitted: [0; 1000000000]. Null when not known.</summary>
    public MoneyBand? Damage => Reference<MoneyBand>(CostOptionMembers.Damage);

    /// <summary>The same with another <see cref="Damage"/>.</summary>
    public CostOptionFacts WithDamage(MoneyBand? value) => new(Set(CostOptionMembers.Damage, value));

    /// <summary>How often the owner slips and resets the clutch.</summary>
    public SlipCare SlipCare => Value<SlipCare>(CostOptionMembers.SlipCare) ?? default;

    /// <summary>The same with another <see cref="SlipCare"/>.</summary>
    public CostOptionFacts WithSlipCare(SlipCare value) => new(Set(CostOptionMembers.SlipCare, value == default ? null : value));

    /// <summary>Where the machine stands between jobs; moist when left out.</summary>
    public StorageClimate Climate => Value<StorageClimate>(CostOptionMembers.Climate) ?? default;

    /// <summary>The same with another <see cref="Climate"/>.</summary>
    public CostOptionFacts WithClimate(StorageClimate value) => new(Set(CostOptionMembers.Climate, value == default ? null : value));

    internal override MemberTable Table => CostOptionMembers.Table;
}
