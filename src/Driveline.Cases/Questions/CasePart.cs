using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>A part of a case: how it turns, how it gives, and what damages it.</summary>
internal static class CasePart
{
    public static Part Of(CaseFile file, CaseObject facts)
    {
        Part part = Part.Open(KindOf(CaseElements.KindOf(facts)), CaseElements.NameOf(facts)!).At(facts.Place);
        part = facts.Get(ElementMembers.Ratio) is { } ratio ? part.WithRatio(ratio) : part;
        part = facts.Get(ElementMembers.Efficiency) is { } efficiency ? part.WithEfficiency(efficiency) : part;
        part = facts.Get(ElementMembers.Inertia) is { } inertia ? part.WithInertia(inertia) : part;
        part = StiffnessOf(facts) is { } stiffness ? part.WithStiffness(stiffness) : part;
        part = facts.Get(ElementMembers.Damping) is { } damping ? part.WithDamping(damping) : part;
        RotationalSpeed? ptoSpeed = file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed);
        return (LimitOf(facts, ptoSpeed) is { } limit ? part.WithLimit(limit) : part).Closed();
    }

    public static ShaftSection? SectionOf(CaseObject facts) =>
        facts.Get(ElementMembers.SplineRootDiameter) is { } root ? ShaftSection.Splined(root) : BodyOf(facts);

    private static PartKind KindOf(ElementKind kind) => kind switch
    {
        ElementKind.Shaft => PartKind.Shaft,
        ElementKind.Gearbox => PartKind.Gearbox,
        ElementKind.UniversalJoint => PartKind.UniversalJoint,
        ElementKind.Rotor => PartKind.Rotor,
        ElementKind.Flywheel => PartKind.Flywheel,
        ElementKind.Yoke => PartKind.Yoke,
        ElementKind.OverrunClutch => PartKind.OverrunClutch,
        _ => PartKind.Other,
    };

    // The torque itself, else the section in its steel, else a rated torque with its factor or alone, else that of the cross.
    private static PartLimit? LimitOf(CaseObject facts, RotationalSpeed? ptoSpeed)
    {
        if (facts.Get(ElementMembers.DamagedAt) is { } torque)
        {
            return PartLimit.DamageTorque(torque);
        }

        StressBand? yield = facts.Get(ElementMembers.YieldStrength) ?? facts.Get(ElementMembers.Material)?.Held?.Yield;
        if (yield is not null && SectionOf(facts) is { } section)
        {
            return PartLimit.Section(TorsionCapacity.Of(section, yield).Torque);
        }

        return RatedOf(facts) is not { } rated
            ? facts.Get(ElementMembers.Cross) is { } series ? PartLimit.Rating(series.RatedTorque(ptoSpeed), JointSeries.Basis) : null
            : facts.Get(ElementMembers.OverloadFactor) is { } factor
                ? PartLimit.RatedTimes(rated, factor, facts.Get(ElementMembers.OverloadSource) is not null)
            : PartLimit.Rating(rated);
    }

    private static Torque? RatedOf(CaseObject facts) => facts.Get(ElementMembers.RatedTorque)
        ?? (facts.Get(ElementMembers.RatedPower) is { } power && facts.Get(ElementMembers.RatedSpeed) is { } speed ? power / speed : null);

    // A stated stiffness, else that of the section over the length, in steel.
    private static StiffnessBand? StiffnessOf(CaseObject facts) => facts.Get(ElementMembers.Stiffness)
        ?? (facts.Get(ElementMembers.Length) is { } length && (BodyOf(facts) ?? SectionOf(facts)) is { } section
            ? LineStiffness.Of(section, length).Stiffness : null);

    // A shaft twists along its body, not at the root of its splines.
    private static ShaftSection? BodyOf(CaseObject facts) => facts.Get(ElementMembers.OuterDiameter) is not { } outer ? null
        : facts.Get(ElementMembers.InnerDiameter) is { } inner && inner > Length.Zero ? ShaftSection.Hollow(outer, inner)
        : ShaftSection.Solid(outer);
}
