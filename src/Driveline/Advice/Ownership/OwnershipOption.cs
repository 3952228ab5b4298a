using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>One thing an owner may do, with what it costs now, per break and per year. What is left out costs nothing. Immutable.</summary>
public sealed class OwnershipOption
{
    private static readonly RatioBand None = RatioBand.Exactly(0, Basis.Given("none stated"));

    private OwnershipOption(string name, OptionKind kind)
    {
        Name = name;
        Kind = kind;
    }

    private OwnershipOption(OwnershipOption other)
        : this(other.Name, other.Kind)
    {
        Outlay = other.Outlay;
        Proceeds = other.Proceeds;
        BreaksPerYear = other.BreaksPerYear;
        BoltPrice = other.BoltPrice;
        MinutesPerChange = other.MinutesPerChange;
        YearlyService = other.YearlyService;
        ServiceMinutesPerYear = other.ServiceMinutesPerYear;
        FacingSet = other.FacingSet;
        FacingSetsPerYear = other.FacingSetsPerYear;
        OverloadsPerYear = other.OverloadsPerYear;
        FailsToProtect = other.FailsToProtect;
        Damage = other.Damage;
        SlipCare = other.SlipCare;
        Climate = other.Climate;
    }

    /// <summary>Name by which the owner knows it.</summary>
    public string Name { get; }

    /// <summary>What it is.</summary>
    public OptionKind Kind { get; }

    /// <summary>Price now: kit, machine, difference of price.</summary>
    public MoneyBand Outlay { get; private init; } = MoneyBand.Nothing;

    /// <summary>What comes back now, such as the old machine's price.</summary>
    public MoneyBand Proceeds { get; private init; } = MoneyBand.Nothing;

    /// <summary>Bolts broken a year; 0 for a clutch.</summary>
    public RatioBand BreaksPerYear { get; private init; } = None;

    /// <summary>Price of a bolt.</summary>
    public MoneyBand BoltPrice { get; private init; } = MoneyBand.Nothing;

    /// <summary>Minutes a change takes.</summary>
    public RatioBand MinutesPerChange { get; private init; } = None;

    /// <summary>Parts and fees of the yearly service.</summary>
    public MoneyBand YearlyService { get; private init; } = MoneyBand.Nothing;

    /// <summary>Minutes of the yearly service.</summary>
    public RatioBand ServiceMinutesPerYear { get; private init; } = None;

    /// <summary>Price of a set of facings.</summary>
    public MoneyBand FacingSet { get; private init; } = MoneyBand.Nothing;

    /// <summary>Sets of facings worn a year.</summary>
    public RatioBand FacingSetsPerYear { get; private init; } = None;

    /// <summary>Overloads a year that would damage an unprotected machine.</summary>
    public RatioBand OverloadsPerYear { get; private init; } = None;

    /// <summary>Share of overloads at which the protection fails though in good order, 0 to 1.</summary>
    public RatioBand FailsToProtect { get; private init; } = None;

    /// <summary>Cost of one damage when the protection fails.</summary>
    public MoneyBand Damage { get; private init; } = MoneyBand.Nothing;

    /// <summary>The owner's habit with a slip clutch; null when the option has none.</summary>
    public SlipCare? SlipCare { get; private init; }

    /// <summary>Where the machine stands.</summary>
    public StorageClimate Climate { get; private init; }

    /// <summary>An option that costs nothing yet.</summary>
    /// <exception cref="ArgumentException">The name is missing or blank.</exception>
    public static OwnershipOption Of(string name, OptionKind kind) =>
        new(Guard.NotBlank(name, "Name of an option", nameof(name)), kind);

    /// <summary>The same option with a price now.</summary>
    public OwnershipOption WithOutlay(MoneyBand price) => new(this) { Outlay = Guard.NotNull(price, nameof(price)) };

    /// <summary>The same option with money that comes back now.</summary>
    public OwnershipOption WithProceeds(MoneyBand proceeds) => new(this) { Proceeds = Guard.NotNull(proceeds, nameof(proceeds)) };

    /// <summary>The same option with bolts that break, and the usual time of a change for their place.</summary>
    public OwnershipOption WithBreaks(RatioBand perYear, MoneyBand boltPrice, BoltAccess access) =>
        WithBreaks(perYear, boltPrice, ChangeTime.Minutes(access));

    /// <summary>The same option with bolts that break.</summary>
    public OwnershipOption WithBreaks(RatioBand perYear, MoneyBand boltPrice, RatioBand minutesPerChange) => new(this)
    {
        BreaksPerYear = Guard.NotNull(perYear, nameof(perYear)),
        BoltPrice = Guard.NotNull(boltPrice, nameof(boltPrice)),
        MinutesPerChange = Guard.NotNull(minutesPerChange, nameof(minutesPerChange)),
    };

    /// <summary>The same option with a yearly service.</summary>
    public OwnershipOption WithYearlyService(MoneyBand cost, RatioBand minutes) =>
        new(this) { YearlyService = Guard.NotNull(cost, nameof(cost)), ServiceMinutesPerYear = Guard.NotNull(minutes, nameof(minutes)) };

    /// <summary>The same option with facings that wear.</summary>
    public OwnershipOption WithFacings(MoneyBand set, RatioBand setsPerYear) =>
        new(this) { FacingSet = Guard.NotNull(set, nameof(set)), FacingSetsPerYear = Guard.NotNull(setsPerYear, nameof(setsPerYear)) };

    /// <summary>The same option with overloads, the share at which the protection fails in good order, and what a damage costs.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share exceeds 1.</exception>
    public OwnershipOption WithOverloads(RatioBand perYear, RatioBand failsToProtect, MoneyBand damage)
    {
        Guard.NotNull(failsToProtect, nameof(failsToProtect));
        return failsToProtect.SiBand.High <= 1
            ? new(this)
            {
                OverloadsPerYear = Guard.NotNull(perYear, nameof(perYear)),
                FailsToProtect = failsToProtect,
                Damage = Guard.NotNull(damage, nameof(damage))
            }
            : throw Guard.OutOfRange(
                "Share of overloads that are not caught", "from 0 to 1", failsToProtect.SiBand.High, string.Empty, nameof(failsToProtect));
    }

    /// <summary>The same option with a slip clutch under an owner's habit: a clutch nobody slips turns into a stuck one.</summary>
    public OwnershipOption WithSlipCare(SlipCare care, StorageClimate climate) => new(this) { SlipCare = care, Climate = climate };

    /// <summary>Its name.</summary>
    public override string ToString() => Name;

    internal IEnumerable<QuantityBand> Inputs()
    {
        yield return Outlay;
        yield return Proceeds;
        yield return BreaksPerYear;
        yield return BoltPrice;
        yield return MinutesPerChange;
        yield return YearlyService;
        yield return ServiceMinutesPerYear;
        yield return FacingSet;
        yield return FacingSetsPerYear;
        yield return OverloadsPerYear;
        yield return FailsToProtect;
        yield return Damage;
    }
}
