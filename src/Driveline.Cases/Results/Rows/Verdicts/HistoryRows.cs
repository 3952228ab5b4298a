using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>What hours of work say.</summary>
internal static class HistoryRows
{
    public static readonly ShapeOf<ProtectionVerdict> Shape = new ShapeOf<ProtectionVerdict>("history", "What hours of work say.")
        .Choice("from", v => v.Question.History!.From, "Who tells it.")
        .Number("hours", v => v.Question.History!.Hours, "Hours of work.")
        .Whole("breaks", v => v.Question.History!.Breaks, "Breaks in them.")
        .Number("breaksAtEngagement", v => v.Question.History!.BreaksAtEngagement, "Breaks while the PTO was engaged.")
        .MaybeFlag("changed", v => v.Question.History!.IsChanged, "True when something was changed since.")
        .Number("breaksPerHourAtMost", v => v.Question.History!.BreaksPerHourAtMost, "Breaks an hour of work, at most.")
        .Flag("settlesQuiet", v => v.IsQuietByExperience, "True when it settles whether the protection stays quiet.");
}
