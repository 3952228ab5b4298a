using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Provenance;

namespace Driveline.Cases.Questions;

/// <summary>The deck of a case: from its blade tips, else from hitch and tail wheel.</summary>
internal static class CaseDeck
{
    private static readonly Basis Measured = Basis.Given("the case");

    /// <summary>The reading; null, with a note that names what is missing, when the attitude cannot be had.</summary>
    public static DeckReading? Of(DeckFacts? facts, List<Finding> notes, List<CaseError> errors)
    {
        if (facts is null)
        {
            return null;
        }

        try
        {
            if (AttitudeOf(facts) is not { } attitude)
            {
                notes.Add(Finding.Of(DeckFindings.NotMeasured, Severity.Note).With("missing", string.Join(", ", Missing(facts))));
                return null;
            }

            DeckReading reading = DeckReading.Of(attitude);
            reading = facts.ManualFrontBelowRear is { } manual ? reading.WithManual(manual) : reading;
            reading = facts.Bumps is { } bumps ? reading.WithBumps(bumps) : reading;
            reading = facts.HitchToTail is { } distance ? reading.WithHitchToTail(distance) : reading;
            return facts.MastHeight is { } mast && facts.TopLinkLength is { } length && facts.TopLinkPinHeight is { } pin
                ? reading.WithTopLink(TopLink.Of(mast, length, pin))
                : reading;
        }
        catch (ArgumentException contradiction)
        {
            errors.Add(CaseChain.Contradiction(CaseFileMembers.Deck.Name, contradiction));
            return null;
        }
    }

    private static DeckAttitude? AttitudeOf(DeckFacts facts)
    {
        if (facts.BladeSpan is not { } span)
        {
            return null;
        }

        if (facts.FrontTip is { } front && facts.RearTip is { } rear)
        {
            return DeckAttitude.FromBladeTips(front, rear, span, Measured);
        }

        return facts.HitchHeight is { } hitch && facts.TailHeight is { } tail && facts.HitchToTail is { } toTail
            && facts.HitchToRotor is { } toRotor && facts.BladesBelow is { } below
            ? DeckAttitude.FromHitchAndTailWheel(hitch, tail, DeckGeometry.Of(toTail, toRotor, below, span), Measured)
            : null;
    }

    // The shorter of the two ways to an attitude that is begun; the blade tips when neither is.
    private static IEnumerable<string> Missing(DeckFacts facts)
    {
        bool isByHitch = facts.FrontTip is null && facts.RearTip is null && (facts.HitchHeight is not null || facts.TailHeight is not null);
        Member[] needed = isByHitch
            ? [DeckMembers.HitchHeight, DeckMembers.TailHeight, DeckMembers.HitchToTail, DeckMembers.HitchToRotor, DeckMembers.BladesBelow, DeckMembers.BladeSpan]
            : [DeckMembers.FrontTip, DeckMembers.RearTip, DeckMembers.BladeSpan];
        return needed.Where(m => facts[m] is null).Select(m => m.Name);
    }
}
