using Driveline.Protection;

namespace Driveline.Cases.Members;

/// <summary>The rows of history.</summary>
internal static class HistoryMembers
{
    public static readonly MemberTable Table = new(
        "history", "How often the protection has acted, over hours that somebody counted; hours and breaks count together only.");

    public static readonly ChoiceMember<HistoryStart> From = Table.Choice<HistoryStart>(
        "from", "What these hours count from: the fitting of the present bolt or setting, or the start of a season.");
    public static readonly QuantityMember<double> Hours = Table.Quantity(
        "hours", QuantityTypes.Number, "(0; 1000000]", "Hours of work since then.");
    public static readonly WholeMember Breaks = Table.Whole(
        "breaks", 0, BreakHistory.MostBreaks,
            "How often the protection has acted in them; those while the PTO was engaged only here when breaksAtEngagement is left out.");
    public static readonly WholeMember BreaksAtEngagement = Table.Whole(
        "breaksAtEngagement", 0, BreakHistory.MostBreaks, "How often it has acted in them while the PTO was engaged.");
    public static readonly FlagMember Changed = Table.Flag(
        "changed", "Whether bolt, setting, machine, tractor or work have changed since then.");

    /// <summary>The history that an object states; null without hours or breaks.</summary>
    public static BreakHistory? HistoryOf(CaseObject? facts) =>
        facts?.Get(Hours) is { } hours && facts.Get(Breaks) is { } breaks
            ? BreakHistory.Of(hours, breaks)
                .WithBreaksAtEngagement(facts.Get(BreaksAtEngagement))
                .WithFrom(facts.Get(From))
                .WithChanged(facts.Get(Changed))
            : null;
}
