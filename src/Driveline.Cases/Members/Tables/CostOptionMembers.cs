using Driveline.Advice;
using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of one option of costs.</summary>
internal static class CostOptionMembers
{
    private const string Rate = "[0; 100000]";
    private const string Minutes = "[0; 10000]";

    public static readonly MemberTable Table = new(
        "option", "One thing the owner may do. What is left out costs nothing.", CaseChecks.AcrossOption);

    public static readonly TextMember Name = Table.Text("name", 200, "What you call it.").Required();
    public static readonly ChoiceMember<OptionKind> Kind = Table.Choice<OptionKind>("kind", "What it is.");
    public static readonly BandMember<MoneyBand> Outlay = Table.Money("outlay", "Price now: kit, machine, difference of price.");
    public static readonly BandMember<MoneyBand> Proceeds = Table.Money(
        "proceeds", "What comes back now, such as the old machine's price.");
    public static readonly BandMember<RatioBand> BreaksPerYear = Table.Ratios("breaksPerYear", Rate, "Bolts broken a year.");
    public static readonly BandMember<MoneyBand> BoltPrice = Table.Money("boltPrice", "Price of its bolt.");
    public static readonly ChoiceMember<BoltAccess> Access = Table.Choice<BoltAccess>(
        "access", "How its bolt is reached, which decides the minutes of a change.");
    public static readonly BandMember<RatioBand> MinutesPerChange = Table.Ratios(
        "minutesPerChange", Minutes, "Minutes a change takes, where somebody has timed it.");
    public static readonly BandMember<MoneyBand> YearlyService = Table.Money("yearlyService", "Parts and fees of the yearly service.");
    public static readonly BandMember<RatioBand> ServiceMinutes = Table.Ratios("serviceMinutes", Minutes, "Minutes of the yearly service.");
    public static readonly BandMember<MoneyBand> FacingSet = Table.Money("facingSet", "Price of a set of facings.");
    public static readonly BandMember<RatioBand> FacingSetsPerYear = Table.Ratios(
        "facingSetsPerYear", "[0; 100]", "Sets of facings worn a year.");
    public static readonly BandMember<RatioBand> OverloadsPerYear = Table.Ratios(
        "overloadsPerYear", Rate, "Overloads a year that would damage an unprotected machine.");
    public static readonly BandMember<RatioBand> FailsToProtect = Table.Ratios(
        "failsToProtect", "[0; 1]", "Share of overloads at which the protection fails though in good order.");
    public static readonly BandMember<MoneyBand> Damage = Table.Money("damage", "Cost of one damage when the protection fails.");
    public static readonly ChoiceMember<SlipCare> SlipCare = Table.Choice<SlipCare>(
        "slipCare", "How often the owner slips and resets the clutch; a clutch that nobody slips turns into a stuck one.");
    public static readonly ChoiceMember<StorageClimate> Climate = Table.Choice<StorageClimate>(
        "climate", "Where the machine stands between jobs; moist when left out.");
}
