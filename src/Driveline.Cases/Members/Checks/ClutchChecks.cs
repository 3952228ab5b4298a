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

    public static void Coil(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Smaller(facts, walk, CoilSpringsMembers.SolidLength, CoilSpringsMembers.FreeLength, "solid length", "free length");
        double? wire = facts.Si(CoilSpringsMembers.Wire);
        double? mean = facts.Si(CoilSpringsMembers.MeanDiameter);
        if (mean < 2 * wire || mean > 50 * wire)
        {
            walk.Contradiction(
                facts,
                CoilSpringsMembers.MeanDiameter,
                "The mean diameter " + MemberChecks.Shown(mean) + " must be from 2 to 50 times the wire " + MemberChecks.Shown(wire) + ".");
        }

        double? longest = LongestSolidM(facts);
        double? solid = facts.Si(CoilSpringsMembers.SolidLength);
        double? free = facts.Si(CoilSpringsMembers.FreeLength);
        if (solid > longest * 1.001)
        {
            walk.Contradiction(
                facts,
                CoilSpringsMembers.SolidLength,
                "The solid length " + MemberChecks.Shown(solid) + " is longer than that many coils of that wire can be, "
                    + MemberChecks.Shown(longest) + ".");
        }

        if (free <= longest)
        {
            walk.Contradiction(
                facts,
                CoilSpringsMembers.FreeLength,
                "The free length " + MemberChecks.Shown(free) + " must be above the solid length of that many coils of that wire, "
                    + MemberChecks.Shown(longest) + ".");
        }
    }

    public static void Disc(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Smaller(facts, walk, DiscSpringsMembers.InnerDiameter, DiscSpringsMembers.OuterDiameter, "inner diameter of the disc",
            "outer diameter");
        MemberChecks.Smaller(
            facts, walk, DiscSpringsMembers.Thickness, DiscSpringsMembers.FreeHeight, "thickness of the disc", "free height");
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

        Shape(facts, walk);
    }

    public static void CutOut(CaseObject facts, CaseWalk walk) => MemberChecks.Bounded(facts, walk, CutOutMembers.AfterTrip);

    // The same limits as a disc spring of the core has.
    private static void Shape(CaseObject facts, CaseWalk walk)
    {
        double? thickness = facts.Si(DiscSpringsMembers.Thickness);
        double? height = facts.Si(DiscSpringsMembers.FreeHeight);
        double? reduced = facts.Si(DiscSpringsMembers.ReducedThickness);
        double? wall = (facts.Si(DiscSpringsMembers.OuterDiameter) - facts.Si(DiscSpringsMembers.InnerDiameter)) / 2;
        if (wall > 0 && thickness > wall)
        {
            walk.Contradiction(
                facts,
                DiscSpringsMembers.Thickness,
                "The thickness " + MemberChecks.Shown(thickness) + " must be at most the width of the ring, " + MemberChecks.Shown(wall)
                    + ".");
        }

        if (height > 4 * thickness)
        {
            walk.Contradiction(
                facts,
                DiscSpringsMembers.FreeHeight,
                "The free height " + MemberChecks.Shown(height) + " must be at most four times the thickness, "
                    + MemberChecks.Shown(4 * thickness) + ".");
        }

        if (reduced < 0.9 * thickness || reduced > thickness)
        {
            walk.Contradiction(
                facts,
                DiscSpringsMembers.ReducedThickness,
                "The reduced thickness " + MemberChecks.Shown(reduced) + " must be from 0.9 times the thickness to all of it, "
                    + MemberChecks.Shown(thickness) + ".");
        }
    }

    private static double? LongestSolidM(CaseObject facts) =>
        facts.Si(CoilSpringsMembers.Wire) is { } wire && facts.Si(CoilSpringsMembers.Coils) is { } coils
            ? CoilSpringKernel.SolidLengthM(wire, coils, facts.Get(CoilSpringsMembers.Ends))
            : null;
}
