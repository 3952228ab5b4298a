using Driveline.Advice;

namespace Driveline.Cases.Members;

/// <summary>The rows of costs.</summary>
internal static class CostMembers
{
    /// <summary>Most options in one list.</summary>
    private const int MostOptions = 20;

    public static readonly MemberTable Table = new(
        "costs", "What the owner's options cost over the years, all amounts in one currency of choice.");

    public static readonly TextMember Currency = Table.Text("currency", 20, "Name of the currency; only a label.").Required();
    public static readonly WholeMember Years = Table.Whole("years", 1, 50, "Years looked at; 10 when left out.");
    public static readonly QuantityMember<double> DiscountRate = Table.Quantity(
        "discountRate", QuantityTypes.Number, "[0; 0.5]", "Discount rate a year; 0 when left out.");
    public static readonly BandMember<MoneyBand> HourOfWork = Table.Money(
        "hourOfWork", "What an hour of the owner's or mechanic's work is worth.");
    public static readonly BandMember<MoneyBand> HourOfDowntime = Table.Money(
        "hourOfDowntime", "What an hour is worth in which the machine stands.");
    public static readonly BandMember<MoneyBand> BoltPrice = Table.Money(
        "boltPrice", "Price of the shear bolt; an option may state another.");
    public static readonly ListMember Options = Table.Objects(
        "options", () => CostOptionMembers.Table, MostOptions, "options", "What the owner may do.");
}
