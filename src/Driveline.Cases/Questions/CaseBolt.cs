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

    public static ProtectiveDevice Device(ShearBoltFacts facts)
    {
        string name = NameOf(facts);
        ShearBolt? bolt = BoltOf(facts);
        ShearBoltJoint? joint = bolt is null ? null : JointOf(facts, bolt);
        return joint is null ? StatedDevice.NotIdentified(name) : ShearBoltDevice.Of(name, joint);
    }

    public static string NameOf(ShearBoltFacts facts) => facts.Name ?? UsualName;

    public static ProtectiveDevice? Specified(SpecifiedBoltFacts facts, ShearBoltDevice fitted, List<CaseError> errors)
    {
        try
        {
            ShearBoltJoint joint = fitted.BreakTorque.Joint;
            return SpecifiedBolt(facts, joint.Bolt) is { } bolt ? ShearBoltDevice.Of("specified bolt", joint.With(bolt)) : null;
        }
        catch (ArgumentException contradiction)
        {
            errors.Add(CaseChain.Contradiction("specified.shearBolt", contradiction));
            return null;
        }
    }

    private static ShearBolt? BoltOf(ShearBoltFacts facts)
    {
        if (facts.ParsedSpringPin is { } pin)
        {
            return ShearBolt.SpringPin(pin);
        }

        if (facts.PinDiameter is { } diameter)
        {
            return Pin(diameter, PinMaterial(facts.ParsedHardness, facts.ParsedGrade, facts.ParsedRodMaterial), facts.PlaneThrough, facts.NeckDiameter);
        }

        return facts.ParsedThread is { } thread
            ? Marked(
                Threaded(
                    thread,
                    Material(thread, facts.ParsedHardness, facts.ParsedGrade, facts.ParsedRodMaterial, facts.IsUnmarked, facts.BoltLength),
                    facts.PlaneThrough,
                    facts.NeckDiameter,
                    facts.ParsedHardness),
                facts)
            : null;
    }

    // A measured hardness beats the grade, but marks that belong to neither the grade nor the hardness leave open which bolt was measured.
    private static ShearBolt Marked(ShearBolt bolt, ShearBoltFacts facts)
    {
        if (facts.ParsedHeadMark is not { } mark)
        {
            return bolt;
        }

        if (facts.ParsedHardness is not null && facts.ParsedGrade is { } grade)
        {
            ShearBolt stated = bolt.WithMaterial(FastenerMaterial.Graded(grade, bolt.Thread!));
            ShearBolt judged = stated.WithHeadMark(mark);
            return judged.Material.MarkConflict is null ? bolt.WithHeadMark(mark) : judged;
        }

        return bolt.WithHeadMark(mark);
    }

    private static ShearBolt? SpecifiedBolt(SpecifiedBoltFacts facts, ShearBolt fitted)
    {
        if (facts.ParsedSpringPin is { } pin)
        {
            return ShearBolt.SpringPin(pin);
        }

        if (facts.PinDiameter is { } diameter)
        {
            return Pin(diameter, PinMaterial(facts.ParsedHardness, facts.ParsedGrade, facts.ParsedRodMaterial), facts.PlaneThrough, facts.NeckDiameter);
        }

        // A plain bolt is cut where the fitted plain bolt is cut: the joint decides, not the bolt.
        PlaneThrough plane = facts.PlaneThrough != PlaneThrough.NotKnown || fitted.NeedsNeck ? facts.PlaneThrough : fitted.PlaneThrough;
        return facts.ParsedThread is { } thread
            ? Threaded(thread, Material(thread, facts.ParsedHardness, facts.ParsedGrade, facts.ParsedRodMaterial, facts.IsUnmarked, null), plane, facts.NeckDiameter, facts.ParsedHardness)
            : null;
    }

    private static ShearBolt Pin(Length diameter, FastenerMaterial material, PlaneThrough plane, Length? neck)
    {
        ShearBolt pin = ShearBolt.Pin(diameter, material);
        pin = plane == PlaneThrough.NotKnown ? pin : pin.With(plane);
        return neck is { } at ? pin.WithNeckDiameter(at) : pin;
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

    private static FastenerMaterial Material(
        ScrewThread thread, Hardness? hardness, BoltGrade? grade, RodMaterial? rod, bool isUnmarked, Length? boltLength) =>
        hardness is not null ? FastenerMaterial.OfMeasuredHardness(hardness)
        : grade is not null ? boltLength is { } length ? FastenerMaterial.Graded(grade, thread, length) : FastenerMaterial.Graded(grade, thread)
        : rod is not null ? FastenerMaterial.Rod(rod)
        : !isUnmarked ? FastenerMaterial.NotKnown
        : thread is MetricThread ? FastenerMaterial.UnmarkedMetricBolt
        : FastenerMaterial.UnmarkedInchBolt;

    private static FastenerMaterial PinMaterial(Hardness? hardness, BoltGrade? grade, RodMaterial? rod) =>
        hardness is not null ? FastenerMaterial.OfMeasuredHardness(hardness)
        : rod is not null ? FastenerMaterial.Rod(rod)
        : grade is null ? FastenerMaterial.NotKnown
        : throw new ArgumentException(
            "A pin without thread has no bolt grade: state its measured hardness or a rod material; got grade \"" + grade.Designation + "\".", nameof(grade));

    private static ShearBoltJoint? JointOf(ShearBoltFacts facts, ShearBolt bolt)
    {
        Length? circle = facts.BoltCircleDiameter ?? (facts.Radius is { } r ? r * 2 : null);
        ShearBoltJoint? joint = facts.Layout switch
        {
            JointLayout.ThroughShaft when facts.ShaftDiameter is { } shaft => ShearBoltJoint.ThroughShaft(bolt, shaft),
            JointLayout.BoltCircle when circle is { } diameter && facts.Bolts is { } bolts => ShearBoltJoint.BoltCircle(bolt, diameter, bolts),
            JointLayout.Tangential when facts.Radius is { } radius => ShearBoltJoint.Tangential(bolt, radius),
            _ => null,
        };
        if (joint is null)
        {
            return null;
        }

        joint = joint.WithHub(facts.Hub).WithHoleFit(facts.HoleFit);
        joint = facts.Planes is { } planes ? joint.WithPlanes(planes) : joint;
        joint = facts.HubFriction is { } friction ? joint.WithHubFriction(friction) : joint;
        joint = facts.StandOff is { } gap ? joint.WithStandOff(gap) : joint;
        joint = facts.YokeThickness is { } wall && facts.YokeYieldStrength is { } yoke ? joint.WithYoke(wall, yoke) : joint;
        joint = facts.HoleDiameter is { } hole ? joint.WithHole(hole) : joint;
        return facts.ShaftYieldStrength is { } shaftYield ? joint.WithShaftYield(shaftYield) : joint;
    }
}
