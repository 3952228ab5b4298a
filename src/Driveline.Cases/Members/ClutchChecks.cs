using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of a slip clutch, its springs, and a cut-out clutch.</summary>
internal static class ClutchChecks
{
    public static void Fitted(CaseDraft draft, CaseWalk walk)
    {
        Smaller(draft, walk, SlipClutchMembers.InnerDiameter, SlipClutchMembers.OuterDiameter, "inner diameter of the faces", "outer diameter");
        OneOf(draft, walk, SlipClutchMembers.SpringLength, SlipClutchMembers.NutTurns);
        OneOf(draft, walk, SlipClutchMembers.LeverTorque, SlipClutchMembers.LeverForce);
        Needs(draft, walk, SlipClutchMembers.NutTurns, SlipClutchMembers.ThreadPitch);
        Needs(draft, walk, SlipClutchMembers.LeverForce, SlipClutchMembers.LeverArm);
        Needs(draft, walk, SlipClutchMembers.LeverArm, SlipClutchMembers.LeverForce);
        Needs(draft, walk, SlipClutchMembers.LeverTorque, SlipClutchMembers.LastSlipTest);
        Needs(draft, walk, SlipClutchMembers.LeverForce, SlipClutchMembers.LastSlipTest);
        Bounded(draft, walk, SlipClutchMembers.SpringLength);
        Bounded(draft, walk, SlipClutchMembers.Wear);
        Bounded(draft, walk, SlipClutchMembers.StatedTorque);
        if (draft.Value<SlipTestOutcome>(SlipClutchMembers.SlipTestResult) != SlipTestOutcome.DidNotSlip)
        {
            Bounded(draft, walk, SlipClutchMembers.LeverTorque);
        }
    }

    public static void Springs(CaseDraft draft, CaseWalk walk) => OneOf(draft, walk, ClutchSpringsMembers.Coil, ClutchSpringsMembers.Disc);

    public static void Coil(CaseDraft draft, CaseWalk walk)
    {
        Smaller(draft, walk, CoilSpringsMembers.SolidLength, CoilSpringsMembers.FreeLength, "solid length", "free length");
        double? longest = LongestSolidM(draft);
        if (draft.Value<double>(CoilSpringsMembers.SolidLength) > longest * 1.001)
        {
            ElementChecks.Contradiction(
                walk,
                draft,
                CoilSpringsMembers.SolidLength,
                "The solid length " + Shown(draft.Value<double>(CoilSpringsMembers.SolidLength)) + " is longer than that many coils of that wire can be, " + Shown(longest) + ".");
        }
    }

    public static void Disc(CaseDraft draft, CaseWalk walk)
    {
        Smaller(draft, walk, DiscSpringsMembers.InnerDiameter, DiscSpringsMembers.OuterDiameter, "inner diameter of the disc", "outer diameter");
        Smaller(draft, walk, DiscSpringsMembers.Thickness, DiscSpringsMembers.FreeHeight, "thickness of the disc", "free height");
        Needs(draft, walk, DiscSpringsMembers.Series, DiscSpringsMembers.OuterDiameter);
        foreach (Member measure in new Member[] { DiscSpringsMembers.InnerDiameter, DiscSpringsMembers.Thickness, DiscSpringsMembers.ReducedThickness, DiscSpringsMembers.FreeHeight })
        {
            OneOf(draft, walk, DiscSpringsMembers.Series, measure);
        }
    }

    public static void CutOut(CaseDraft draft, CaseWalk walk) => Bounded(draft, walk, CutOutMembers.AfterTrip);

    private static double? LongestSolidM(CaseDraft draft)
    {
        if (draft.Value<double>(CoilSpringsMembers.Wire) is not { } wire || draft.Value<double>(CoilSpringsMembers.Coils) is not { } coils)
        {
            return null;
        }

        return CoilSpringKernel.SolidLengthM(wire, coils, draft.Value<CoilEnds>(CoilSpringsMembers.Ends) ?? CoilEnds.NotKnown);
    }

    private static void Smaller(CaseDraft draft, CaseWalk walk, Member inner, Member outer, string innerWords, string outerWords)
    {
        if (draft.Value<double>(inner) >= draft.Value<double>(outer))
        {
            ElementChecks.Contradiction(
                walk,
                draft,
                inner,
                "The " + innerWords + " " + Shown(draft.Value<double>(inner)) + " must be smaller than the " + outerWords + " " + Shown(draft.Value<double>(outer)) + ".");
        }
    }

    private static void OneOf(CaseDraft draft, CaseWalk walk, Member one, Member other)
    {
        if (draft.IsStated(one) && draft.IsStated(other))
        {
            ElementChecks.Contradiction(walk, draft, other, "State \"" + one.Name + "\" or \"" + other.Name + "\", not both.");
        }
    }

    private static void Needs(CaseDraft draft, CaseWalk walk, Member member, Member needed)
    {
        if (draft.IsStated(member) && !draft.IsStated(needed))
        {
            ElementChecks.Contradiction(walk, draft, member, "\"" + member.Name + "\" means nothing without \"" + needed.Name + "\"; state that too.");
        }
    }

    private static void Bounded(CaseDraft draft, CaseWalk walk, Member member)
    {
        if (draft.Reference<QuantityBand>(member) is { IsBounded: false })
        {
            ElementChecks.Contradiction(walk, draft, member, "\"" + member.Name + "\" needs a high end here; leave it out when it is not known.");
        }
    }

    private static string Shown(double? m) => QuantityText.Format(m ?? 0, Dimension.Length);
}
