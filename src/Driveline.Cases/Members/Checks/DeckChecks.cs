using Driveline.Advice;
using Driveline.Provenance;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the measures of a deck, and what they give.</summary>
internal static class DeckChecks
{
    private static readonly Basis Measured = Basis.Given("the case");

    public static void Across(CaseObject facts, CaseWalk walk)
    {
        double? span = facts.Si(DeckMembers.BladeSpan);
        Below(facts, walk, DeckMembers.FrontTip, facts.Si(DeckMembers.FrontTip) - facts.Si(DeckMembers.RearTip), span,
            "heights of the blade tips");
        Below(facts, walk, DeckMembers.ManualFrontBelowRear, facts.Si(DeckMembers.ManualFrontBelowRear), span,
            "heights that the manual wants");
        if (!HasTips(facts) && GeometryOf(facts) is { } geometry && facts.Si(DeckMembers.HitchHeight) is { } hitch
            && facts.Si(DeckMembers.TailHeight) is { } tail
            && DeckAttitude.HitchProblem(hitch, tail, geometry) is { } problem)
        {
            walk.Contradiction(facts, DeckMembers.HitchHeight, problem);
        }
        else if (!walk.HasErrors && AttitudeOf(facts) is { } attitude && LinkOf(facts)?.SpanProblem(attitude) is { } tooShort)
        {
            walk.Contradiction(facts, DeckMembers.TopLinkLength, tooShort);
        }
    }

    /// <summary>The attitude from the blade tips, else from hitch and tail wheel; null when measures are missing.</summary>
    public static DeckAttitude? AttitudeOf(CaseObject facts)
    {
        if (HasTips(facts))
        {
            return facts.Get(DeckMembers.BladeSpan) is { } span
                ? DeckAttitude.FromBladeTips(facts.Get(DeckMembers.FrontTip)!.Value, facts.Get(DeckMembers.RearTip)!.Value, span, Measured)
                : null;
        }

        return GeometryOf(facts) is { } geometry && facts.Get(DeckMembers.HitchHeight) is { } hitch
            && facts.Get(DeckMembers.TailHeight) is { } tail
            ? DeckAttitude.FromHitchAndTailWheel(hitch, tail, geometry, Measured)
            : null;
    }

    public static TopLink? LinkOf(CaseObject facts) =>
        facts.Get(DeckMembers.MastHeight) is { } mast && facts.Get(DeckMembers.TopLinkLength) is { } length
            && facts.Get(DeckMembers.TopLinkPinHeight) is { } pin
            ? TopLink.Of(mast, length, pin)
            : null;

    private static bool HasTips(CaseObject facts) => facts[DeckMembers.FrontTip] is not null && facts[DeckMembers.RearTip] is not null;

    private static DeckGeometry? GeometryOf(CaseObject facts) =>
        facts.Get(DeckMembers.HitchToTail) is { } toTail && facts.Get(DeckMembers.HitchToRotor) is { } toRotor
            && facts.Get(DeckMembers.BladesBelow) is { } below && facts.Get(DeckMembers.BladeSpan) is { } span
            ? DeckGeometry.Of(toTail, toRotor, below, span)
            : null;

    private static void Below(CaseObject facts, CaseWalk walk, Member member, double? differenceM, double? spanM, string what)
    {
        if (Math.Abs(differenceM ?? 0) >= spanM)
        {
            walk.Contradiction(
                facts,
                member,
                "The difference of the " + what + ", " + MemberChecks.Shown(Math.Abs(differenceM ?? 0)) + ", must be below the blade span, "
                    + MemberChecks.Shown(spanM) + ".");
        }
    }
}
