using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The shear-bolt joint of a case, as fitted and as specified.</summary>
/// <remarks>
/// A measured hardness beats the grade. A step or taper is a maker's special, known by its neck diameter and measured hardness
/// only; a turned neck in a graded bolt keeps the grade. Without size, layout or radius the device is there but not identified.
/// </remarks>
internal static class CaseBolt
{
    private const string UsualName = "shear bolt";

    public static ProtectiveDevice Device(CaseObject facts, DateTime? day)
    {
        string name = NameOf(facts);
        PlaneThrough plane = facts.Get(ShearBoltMembers.PlaneThrough);
        ShearBolt? bolt = BoltOf(facts, ShearBoltMembers.Bolt, plane, facts.Get(ShearBoltMembers.BoltLength));
        ShearBoltJoint? joint = bolt is null ? null : JointOf(facts, Marked(bolt, facts), day);
        return joint is null ? StatedDevice.NotIdentified(name) : ShearBoltDevice.Of(name, joint);
    }

    public static string NameOf(CaseObject facts) => facts.Get(ShearBoltMembers.Name) ?? UsualName;

    public static ProtectiveDevice? Specified(CaseObject facts, ShearBoltDevice fitted, List<CaseError> errors)
    {
        // A plain bolt is cut where the fitted plain bolt is cut: the joint decides, not the bolt.
        ShearBoltJoint joint = fitted.BreakTorque.Joint;
        PlaneThrough stated = facts.Get(SpecifiedBoltMembers.PlaneThrough);
        bool isAsFitted = stated == PlaneThrough.NotKnown && facts.Get(SpecifiedBoltMembers.PinDiameter) is null && !joint.Bolt.NeedsNeck;
        if (BoltOf(facts, SpecifiedBoltMembers.Bolt, isAsFitted ? joint.Bolt.PlaneThrough : stated, null) is not { } bolt)
        {
            return null;
        }

        if (joint.Problem(bolt) is { } problem)
        {
            errors.Add(facts.Contradiction(problem));
            return null;
        }

        return ShearBoltDevice.Of("specified bolt", joint.With(bolt));
    }

    // A measured hardness beats the grade, but marks that belong to neither the grade nor the hardness leave open which bolt was measured.
    private static ShearBolt Marked(ShearBolt bolt, CaseObject facts)
    {
        if (bolt.Thread is null || facts.Get(ShearBoltMembers.HeadMarks) is not { } mark)
        {
            return bolt;
        }

        if (facts.Get(ShearBoltMembers.Hardness) is not null && facts.Get(ShearBoltMembers.Grade)?.Grade is { } grade)
        {
            ShearBolt judged = bolt.WithMaterial(FastenerMaterial.Graded(grade, bolt.Thread)).WithHeadMark(mark);
            return judged.Material.MarkConflict is null ? bolt.WithHeadMark(mark) : judged;
        }

        return bolt.WithHeadMark(mark);
    }

    private static ShearBolt? BoltOf(CaseObject facts, BoltRows rows, PlaneThrough plane, Length? boltLength)
    {
        if (facts.Get(rows.SpringPin) is { } springPin)
        {
            return ShearBolt.SpringPin(springPin);
        }

        Length? neck = facts.Get(rows.NeckDiameter);
        Hardness? hardness = facts.Get(rows.Hardness);
        MaterialName material = facts.Get(rows.Grade) ?? MaterialName.NotKnown;
        if (facts.Get(rows.PinDiameter) is { } diameter)
        {
            ShearBolt pin = ShearBolt.Pin(diameter, PinMaterial(hardness ?? material.Hardness, material.RodMaterial));
            pin = plane == PlaneThrough.NotKnown ? pin : pin.With(plane);
            return neck is { } at ? pin.WithNeckDiameter(at) : pin;
        }

        return facts.Get(rows.Thread) is { } thread
            ? Threaded(thread, MaterialOf(thread, hardness, material, boltLength), plane, neck, hardness ?? material.Hardness)
            : null;
    }

    private static ShearBolt Threaded(ScrewThread thread, FastenerMaterial material, PlaneThrough plane, Length? neck, Hardness? hardness)
    {
        bool isMakersSpecial = plane is PlaneThrough.Step or PlaneThrough.Taper || (plane == PlaneThrough.Neck && material.Grade is null);
        if (isMakersSpecial)
        {
            return ShearBolt.Special(thread, plane, neck, hardness);
        }

        ShearBolt bolt = ShearBolt.Of(thread, material).With(plane);
        return neck is { } at ? bolt.WithNeckDiameter(at) : bolt;
    }

    private static FastenerMaterial MaterialOf(ScrewThread thread, Hardness? hardness, MaterialName material, Length? boltLength) =>
        hardness is not null ? FastenerMaterial.OfMeasuredHardness(hardness)
        : material.Grade is { } grade && boltLength is { } length ? FastenerMaterial.Graded(grade, thread, length)
        : material.At(thread);

    private static FastenerMaterial PinMaterial(Hardness? hardness, RodMaterial? rod) =>
        hardness is not null ? FastenerMaterial.OfMeasuredHardness(hardness)
        : rod is not null ? FastenerMaterial.Rod(rod)
        : FastenerMaterial.NotKnown;

    private static ShearBoltJoint? JointOf(CaseObject facts, ShearBolt bolt, DateTime? day)
    {
        Length? radius = facts.Get(ShearBoltMembers.Radius);
        Length? circle = facts.Get(ShearBoltMembers.BoltCircleDiameter) ?? (radius is { } half ? half * 2 : null);
        ShearBoltJoint? joint = facts.Get(ShearBoltMembers.Layout) switch
        {
            JointLayout.ThroughShaft when facts.Get(ShearBoltMembers.ShaftDiameter) is { } shaft =>
                ShearBoltJoint.ThroughShaft(bolt, shaft),
            JointLayout.BoltCircle when circle is { } diameter
                && facts.Get(ShearBoltMembers.Bolts) is { } bolts => ShearBoltJoint.BoltCircle(bolt, diameter, bolts),
            JointLayout.Tangential when radius is { } at => ShearBoltJoint.Tangential(bolt, at),
            _ => null,
        };
        if (joint is null)
        {
            return null;
        }

        joint = Seen(joint.WithHub(facts.Get(ShearBoltMembers.Hub)).WithHoleFit(facts.Get(ShearBoltMembers.HoleFit)), facts, day);
        joint = facts.Get(ShearBoltMembers.Planes) is { } planes ? joint.WithPlanes(planes) : joint;
        joint = facts.Get(ShearBoltMembers.HubFriction) is { } friction ? joint.WithHubFriction(friction) : joint;
        joint = facts.Get(ShearBoltMembers.StandOff) is { } gap ? joint.WithStandOff(gap) : joint;
        if (facts.Get(ShearBoltMembers.YokeThickness) is { } wall)
        {
            joint = facts.Get(ShearBoltMembers.YokeYieldStrength) is { } yoke ? joint.WithYoke(wall, yoke) : joint;
            joint = facts.Get(ShearBoltMembers.YokeTensileStrength) is { } tensile ? joint.WithYokeTensile(wall, tensile) : joint;
        }

        joint = facts.Get(ShearBoltMembers.YokeEdge) is { } edge ? joint.WithYokeEdge(edge) : joint;
        joint = facts.Get(ShearBoltMembers.BoltLength) is { } length && facts.Get(ShearBoltMembers.HubDiameter) is { } hub
            ? joint.WithBoltLength(length, hub) : joint;
        joint = facts.Get(ShearBoltMembers.HoleDiameter) is { } hole ? joint.WithHole(hole) : joint;
        return facts.Get(ShearBoltMembers.ShaftYieldStrength) is { } shaftYield ? joint.WithShaftYield(shaftYield) : joint;
    }

    // Without a date of the case no age can be told.
    private static ShearBoltJoint Seen(ShearBoltJoint joint, CaseObject facts, DateTime? day)
    {
        if (facts.Get(ShearBoltMembers.HubSeen) is { } seen)
        {
            joint = day is { } today ? joint.WithHubSeen(seen, today) : joint.WithHubSeen(seen);
        }

        return facts.Get(ShearBoltMembers.LastTrip) is not { } trip ? joint
            : day is { } on ? joint.WithLastTrip(trip, on)
            : joint.WithLastTrip(trip);
    }
}
