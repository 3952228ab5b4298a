using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Findings;

namespace Driveline.Cases.Questions;

/// <summary>The deck of a case: from its blade tips, else from hitch and tail wheel.</summary>
internal static class CaseDeck
{
    /// <summary>The reading; null, with a note that names what is missing, when the attitude cannot be had.</summary>
    public static DeckReading? Of(CaseObject? facts, List<Finding> notes)
    {
        if (facts is null)
        {
            return null;
        }

        if (DeckChecks.AttitudeOf(facts) is not { } attitude)
        {
            notes.Add(Finding.Of(DeckFindings.NotMeasured, Severity.Note).With("missing", string.Join(", ", Missing(facts))));
            return null;
        }

        DeckReading reading = DeckReading.Of(attitude);
        reading = facts.Get(DeckMembers.ManualFrontBelowRear) is { } manual ? reading.WithManual(manual) : reading;
        reading = facts.Get(DeckMembers.Bumps) is { } bumps ? reading.WithBumps(bumps) : reading;
        reading = facts.Get(DeckMembers.HitchToTail) is { } distance ? reading.WithHitchToTail(distance) : reading;
        return DeckChecks.LinkOf(facts) is { } link ? reading.WithTopLink(link) : reading;
    }

    // The shorter of the two ways to an attitude that is begun; the blade tips when neither is.
    private static IEnumerable<string> Missing(CaseObject facts)
    {
        bool isByTips = facts.IsStated(DeckMembers.FrontTip) || facts.IsStated(DeckMembers.RearTip);
        bool isByHitch = !isByTips && (facts.IsStated(DeckMembers.HitchHeight) || facts.IsStated(DeckMembers.TailHeight));
        Member[] needed = isByHitch
            ? [DeckMembers.HitchHeight, DeckMembers.TailHeight, DeckMembers.HitchToTail, DeckMembers.HitchToRotor, DeckMembers.BladesBelow,
                DeckMembers.BladeSpan]
            : [DeckMembers.FrontTip, DeckMembers.RearTip, DeckMembers.BladeSpan];
        return needed.Where(m => !facts.IsStated(m)).Select(m => m.Name);
    }
}
