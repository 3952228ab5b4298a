using Driveline.Clutches;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of a slip clutch, its springs, and a cut-out clutch.</summary>
internal static class ClutchChecks
{
    public static void Fitted(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Smaller(
            facts, walk, SlipClutchMembers.InnerDiameter, SlipClutchMembers.OuterDiameter, "inner diameter of the faces", "outer diameter");
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

        if (facts.Get(DiscSpringsMembers.Series) is { } series && facts.Get(DiscSpringsMembers.OuterDiameter) is { } outer
            && !Din2093.TryFind(series[0], outer, out _))
        {
            walk.Contradiction(facts, DiscSpringsMembers.OuterDiameter, Din2093.NotHeldText(series[0]));
        }

        MemberChecks.Report(facts, walk, DiscSpringConflicts.Of(
            facts.Si(DiscSpringsMembers.OuterDiameter),
            facts.Si(DiscSpringsMembers.InnerDiameter),
            facts.Si(DiscSpringsMembers.Thickness),
            facts.Si(DiscSpringsMembers.ReducedThickness),
            facts.Si(DiscSpringsMembers.FreeHeight)));
    }

    public static void CutOut(CaseObject facts, CaseWalk walk) => MemberChecks.Bounded(facts, walk, CutOutMembers.AfterTrip);
}
