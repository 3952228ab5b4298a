using Driveline.Clutches;

namespace Driveline.Cases.Members;

/// <summary>
/// How the members of a clutch may be stated: of two ways to say one thing only one, and none that says nothing by itself. What its
/// measures must not contradict, the core says.
/// </summary>
internal static class ClutchChecks
{
    public static void Fitted(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Report(facts, walk, FaceConflicts.Of(
            facts.Si(SlipClutchMembers.OuterDiameter), facts.Si(SlipClutchMembers.InnerDiameter)));
        MemberChecks.NotBoth(facts, walk, SlipClutchMembers.SpringLength, SlipClutchMembers.NutTurns);
        MemberChecks.NotBoth(facts, walk, SlipClutchMembers.LeverTorque, SlipClutchMembers.LeverForce);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.NutTurns, SlipClutchMembers.ThreadPitch);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.LeverForce, SlipClutchMembers.LeverArm);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.LeverArm, SlipClutchMembers.LeverForce);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.LeverTorque, SlipClutchMembers.LastSlipTest);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.LeverForce, SlipClutchMembers.LastSlipTest);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.BreakawayTorque, SlipClutchMembers.LeverTorque);
        MemberChecks.Needs(facts, walk, SlipClutchMembers.BreakawayForce, SlipClutchMembers.LeverForce);
        MemberChecks.Bounded(facts, walk, SlipClutchMembers.BreakawayTorque);
        MemberChecks.Bounded(facts, walk, SlipClutchMembers.SpringLength);
        MemberChecks.Bounded(facts, walk, SlipClutchMembers.Wear);
        MemberChecks.Bounded(facts, walk, SlipClutchMembers.StatedTorque);
        if (facts.Get(SlipClutchMembers.SlipTestResult) != SlipTestOutcome.DidNotSlip)
        {
            MemberChecks.Bounded(facts, walk, SlipClutchMembers.LeverTorque);
        }
    }

    public static void Springs(CaseObject facts, CaseWalk walk) =>
        MemberChecks.NotBoth(facts, walk, ClutchSpringsMembers.Coil, ClutchSpringsMembers.Disc);

    public static void Coil(CaseObject facts, CaseWalk walk) => MemberChecks.Report(facts, walk, CoilSpringConflicts.Of(
        facts.Si(CoilSpringsMembers.Wire),
        facts.Si(CoilSpringsMembers.MeanDiameter),
        facts.Si(CoilSpringsMembers.Coils),
        facts.Get(CoilSpringsMembers.Ends),
        facts.Si(CoilSpringsMembers.SolidLength),
        facts.Si(CoilSpringsMembers.FreeLength)));

    public static void Disc(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Needs(facts, walk, DiscSpringsMembers.Series, DiscSpringsMembers.OuterDiameter);
        Member[] measures = [DiscSpringsMembers.InnerDiameter, DiscSpringsMembers.Thickness, DiscSpringsMembers.ReducedThickness,
            DiscSpringsMembers.FreeHeight];
        foreach (Member measure in measures)
        {
            MemberChecks.NotBoth(facts, walk, DiscSpringsMembers.Series, measure);
        }

        MemberChecks.Report(facts, walk, DiscSpringConflicts.OfSeries(
            facts.Get(DiscSpringsMembers.Series), facts.Get(DiscSpringsMembers.OuterDiameter)));
        MemberChecks.Report(facts, walk, DiscSpringConflicts.Of(
            facts.Si(DiscSpringsMembers.OuterDiameter),
            facts.Si(DiscSpringsMembers.InnerDiameter),
            facts.Si(DiscSpringsMembers.Thickness),
            facts.Si(DiscSpringsMembers.ReducedThickness),
            facts.Si(DiscSpringsMembers.FreeHeight)));
    }

    public static void CutOut(CaseObject facts, CaseWalk walk) => MemberChecks.Bounded(facts, walk, CutOutMembers.AfterTrip);
}
