using Driveline.Provenance;

namespace Driveline.Advice;

/// <summary>Prices where an owner states none: guesses, wide enough for most, and marked as guesses wherever they are shown.</summary>
internal static class UsualPrices
{
    /// <summary>The currency of these prices.</summary>
    public const string Currency = "USD";

    /// <summary>An hour of the owner's or a mechanic's work.</summary>
    public static readonly MoneyBand HourOfWork = MoneyBand.Between(
        15, 30, 90, Basis.FromMemory("an hour of work: from an owner's own hour to a workshop's; a guess"));

    /// <summary>One shear bolt with its nut.</summary>
    public static readonly MoneyBand Bolt = MoneyBand.Between(
        0.5, 2, 12, Basis.FromMemory("a shear bolt with its nut: from a box of plain bolts to a maker's special; a guess"));
}
