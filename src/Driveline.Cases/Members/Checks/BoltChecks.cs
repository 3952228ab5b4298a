using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of a shear bolt.</summary>
internal static class BoltChecks
{
    public static void Fitted(CaseObject facts, CaseWalk walk)
    {
        Specified(facts, walk, ShearBoltMembers.Bolt);
        Length(facts, walk);
        Hole(facts, walk);
        Shaft(facts, walk);
        Yoke(facts, walk);
        double? radius = facts.Si(ShearBoltMembers.Radius);
        double? circle = facts.Si(ShearBoltMembers.BoltCircleDiameter);
        if (Math.Abs((circle / 2 / radius ?? 1) - 1) > 0.01)
        {
            walk.Contradiction(
                facts,
                ShearBoltMembers.BoltCircleDiameter,
                "The bolt circle " + MemberChecks.Shown(circle) + " is not twice the radius " + MemberChecks.Shown(radius)
                    + "; state one of the two.");
        }
    }

    public static void Specified(CaseObject facts, CaseWalk walk) => Specified(facts, walk, SpecifiedBoltMembers.Bolt);

    /// <summary>Diameter of the bolt; null when it is not known.</summary>
    public static double? DiameterM(CaseObject facts, BoltRows rows) =>
        facts.Get(rows.SpringPin)?.DiameterM ?? facts.Si(rows.PinDiameter) ?? facts.Get(rows.Thread)?.MajorDiameterM;

    private static void Specified(CaseObject facts, CaseWalk walk, BoltRows rows)
    {
        OneBody(facts, walk, rows.Thread, rows.PinDiameter, rows.SpringPin);
        Neck(facts, walk, rows);
        Material(facts, walk, rows);
        MemberChecks.Refuse(
            facts,
            walk,
            rows.PlaneThrough,
            facts.IsStated(rows.PinDiameter) && facts.Get(rows.PlaneThrough) == PlaneThrough.Thread,
            "A pin's shear plane must be shank, neck, step or taper: it has no thread.");
    }

    /// <summary>A bolt is a thread, a plain pin or a spring pin.</summary>
    private static void OneBody(CaseObject facts, CaseWalk walk, params Member[] bodies)
    {
        Member[] stated = bodies.Where(facts.IsStated).OrderBy(facts.OffsetOf).ToArray();
        for (int i = 1; i < stated.Length; i++)
        {
            walk.Contradiction(
                facts, stated[i],
                    "A shear bolt has a thread, a pin diameter or a spring pin; \"" + stated[0].Name + "\" is stated already.");
        }
    }

    private static void Neck(CaseObject facts, CaseWalk walk, BoltRows rows)
    {
        double? pin = facts.Si(rows.PinDiameter);
        double? neck = facts.Si(rows.NeckDiameter);
        double? bolt = pin ?? facts.Get(rows.Thread)?.MajorDiameterM;
        if (neck > bolt * (1 + 1e-9))
        {
            string body = pin is null ? "bolt " : "pin ";
            walk.Contradiction(
                facts,
                rows.NeckDiameter,
                "The neck " + MemberChecks.Shown(neck) + " must not be thicker than the " + body + MemberChecks.Shown(bolt) + ".");
        }
    }

    private static void Material(CaseObject facts, CaseWalk walk, BoltRows rows)
    {
        MaterialName? grade = facts.Get(rows.Grade);
        Hardness? hardness = facts.Get(rows.Hardness);
        ScrewThread? thread = facts.Get(rows.Thread);
        bool isPin = facts.IsStated(rows.PinDiameter);
        if (thread is not null && grade?.ProblemAt(thread) is { } problem)
        {
            walk.Contradiction(facts, rows.Grade, problem);
        }

        if (isPin && hardness is null && grade?.Grade is { } bolt)
        {
            walk.Contradiction(
                facts,
                rows.Grade,
                "A pin without thread has no bolt grade: state its measured hardness or a rod material; got grade \"" + bolt.Designation
                    + "\".");
        }

        if (hardness is not null && (isPin || thread is not null) && !hardness.TryToTensile(out _))
        {
            walk.Contradiction(facts, rows.Hardness, HardnessTables.OffTheTablesText(hardness));
        }
    }

    private static void Length(CaseObject facts, CaseWalk walk)
    {
        if (facts.Get(ShearBoltMembers.BoltLength) is { } length && facts.Get(ShearBoltMembers.Thread) is { } thread
            && facts.Get(ShearBoltMembers.Grade)?.Grade is { } grade && grade.TryAt(thread, out _) && !grade.TryAt(thread, length, out _))
        {
            walk.Contradiction(
                facts, ShearBoltMembers.BoltLength,
                    grade.Designation + " is not held at " + thread + " in that length; leave the length out when it is not sure.");
        }
    }

    private static void Yoke(CaseObject facts, CaseWalk walk)
    {
        double? bolt = DiameterM(facts, ShearBoltMembers.Bolt);
        MemberChecks.Refuse(
            facts,
            walk,
            ShearBoltMembers.YokeEdge,
            facts.Si(ShearBoltMembers.YokeEdge) <= bolt / 2,
            "The distance from the middle of the hole to the edge must be above half the bolt's diameter " + MemberChecks.Shown(bolt)
                + ".");
        MemberChecks.Refuse(
            facts,
            walk,
            ShearBoltMembers.HubDiameter,
            facts.Get(ShearBoltMembers.Layout) == JointLayout.ThroughShaft
                && facts.Si(ShearBoltMembers.HubDiameter) <= facts.Si(ShearBoltMembers.ShaftDiameter),
            "The hub must be thicker than the shaft " + MemberChecks.Shown(facts.Si(ShearBoltMembers.ShaftDiameter)) + " in it.");
    }

    /// <summary>The bolt is in its hole; a caliper may read 2 % too little.</summary>
    private static void Hole(CaseObject facts, CaseWalk walk)
    {
        double? bolt = DiameterM(facts, ShearBoltMembers.Bolt);
        double? hole = facts.Si(ShearBoltMembers.HoleDiameter);
        if (hole < bolt * 0.98)
        {
            walk.Contradiction(
                facts,
                ShearBoltMembers.HoleDiameter,
                "The hole " + MemberChecks.Shown(hole) + " must not be narrower than the bolt in it, " + MemberChecks.Shown(bolt) + ".");
        }
    }

    /// <summary>Bolt and hole go through the shaft.</summary>
    private static void Shaft(CaseObject facts, CaseWalk walk)
    {
        double? bolt = DiameterM(facts, ShearBoltMembers.Bolt);
        double? shaft = facts.Si(ShearBoltMembers.ShaftDiameter);
        double? hole = facts.Si(ShearBoltMembers.HoleDiameter);
        if (facts.Get(ShearBoltMembers.Layout) != JointLayout.ThroughShaft)
        {
            return;
        }

        if (shaft <= hole && !(shaft <= bolt))
        {
            walk.Contradiction(
                facts,
                ShearBoltMembers.HoleDiameter,
                "The hole " + MemberChecks.Shown(hole) + " must be thinner than the shaft it crosses, " + MemberChecks.Shown(shaft) + ".");
        }

        if (shaft <= bolt)
        {
            walk.Contradiction(
                facts,
                ShearBoltMembers.ShaftDiameter,
                "The shaft " + MemberChecks.Shown(shaft) + " must be thicker than the bolt through it, " + MemberChecks.Shown(bolt) + ".");
        }
    }
}
