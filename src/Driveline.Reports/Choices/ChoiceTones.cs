using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Choices;

/// <summary>The colour of a choice: green only where something leaves room on both sides and no danger stands beside it.</summary>
internal static class ChoiceTones
{
    public static LeadTone Of(BoltChoice choice) => Of(
        choice.Best is { LeavesRoom: true, Verdict: { Guards: Answer.Yes, Quiet: Answer.Yes, Standing.State: not StandingState.Stop } },
        choice.Findings);

    public static LeadTone Of(ClutchChoice choice) => Of(choice.Window is not null, choice.Findings);

    private static LeadTone Of(bool isGood, IReadOnlyList<Finding> findings) =>
        (isGood, findings.Any(f => f.Severity == Severity.Danger)) switch
        {
            (true, false) => LeadTone.Good,
            (false, true) => LeadTone.Bad,
            _ => LeadTone.Careful,
        };
}
