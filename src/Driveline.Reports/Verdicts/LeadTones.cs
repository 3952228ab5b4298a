using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>The colour of a verdict: green only when both questions are answered well.</summary>
internal static class LeadTones
{
    /// <summary>The colour of the headline: never green beside a stop, nor for room as small as a remembered number may err.</summary>
    public static LeadTone Of(ProtectionVerdict verdict) => verdict.Headline switch
    {
        Headline.Protected when AnswerSentences.NarrowMargin(verdict) is not null => LeadTone.Careful,
        Headline.Protected or Headline.AsSpecified => verdict.Standing.State == StandingState.Stop ? LeadTone.Careful : LeadTone.Good,
        Headline.DoesNotProtect or Headline.NoSettingFits => LeadTone.Bad,
        _ => LeadTone.Careful,
    };

    public static LeadTone Of(StandingState state) => state switch
    {
        StandingState.GoOn => LeadTone.Good,
        StandingState.Stop => LeadTone.Bad,
        _ => LeadTone.Careful,
    };
}
