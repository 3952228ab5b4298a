using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The chain of a case: its elements in order, behind the PTO stub that its tractor implies.</summary>
internal static class CaseChain
{
    /// <summary>The chain, its slip clutches in their place; null, with errors, when facts contradict each other.</summary>
    public static DrivelineChain? Of(CaseFile file, List<CaseError> errors)
    {
        List<Element> elements = ElementsOf(file, file.Facts.Get(CaseFileMembers.Driveline), errors);
        if (errors.Count > 0)
        {
            return null;
        }

        if (Stub(file.Facts.Get(CaseFileMembers.Tractor)) is { } stub)
        {
            elements.Insert(0, stub);
        }

        Part unknown = Part.Of(PartKind.PtoStub, "PTO stub").At(FactPlace.Of("tractor", []));
        DrivelineChain chain = DrivelineChain.Of(elements.Count > 0 ? [.. elements] : [unknown]);
        return chain.InPlace(
            file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed), CaseWork.Stated(file, chain)?.Torque);
    }

    private static Part? Stub(CaseObject? tractor)
    {
        if (tractor is null)
        {
            return null;
        }

        PtoType? type = tractor.Get(TractorMembers.PtoType) is { } number ? PtoTypes.Of(number) : null;
        Part stub = Part.Of(PartKind.PtoStub, type is null ? "PTO stub" : FormattableString.Invariant($"PTO stub (type {type.Number})"))
            .At(tractor.Place);
        return tractor.Get(TractorMembers.StubDamagedAt) is { } damagedAt ? stub.WithDamageTorque(damagedAt)
            : type is not null && tractor.Get(TractorMembers.StubYieldStrength) is { } yield
                ? stub.WithLimit(PartLimit.Section(StubStrength.Of(type, yield).Torque))
            : type is not null ? stub.WithLimit(PartLimit.ImpliedByPtoType(StubStrength.Of(type).Torque))
            : null;
    }

    private static List<Element> ElementsOf(CaseFile file, CaseList facts, List<CaseError> errors)
    {
        int before = errors.Count;
        var elements = new List<Element>();
        foreach (CaseObject element in facts)
        {
            if (ElementOf(file, element, errors) is { } good)
            {
                elements.Add(good);
            }
        }

        if (errors.Count == before && DrivelineChain.ShareProblem(elements, out int index) is { } problem)
        {
            errors.Add(facts[index].Contradiction(ElementMembers.PowerShare, problem));
        }

        return elements;
    }

    private static Element? ElementOf(CaseFile file, CaseObject facts, List<CaseError> errors)
    {
        if (facts.Get(ElementMembers.ShearBolt) is { } bolt)
        {
            return BoltFacts.Fitted(bolt, file.Date).Device;
        }

        if (facts.Get(ElementMembers.SlipClutch) is { } slipClutch)
        {
            return CaseSlipClutch.Of(slipClutch, file.Date, errors)?.Device;
        }

        if (facts.Get(ElementMembers.CutOut) is { } cutOut)
        {
            return CaseCutOut.Device(cutOut, file.Date);
        }

        return CaseElements.KindOf(facts) == ElementKind.Branch ? BranchOf(file, facts, errors) : PartOf(file, facts);
    }

    private static Branch? BranchOf(CaseFile file, CaseObject facts, List<CaseError> errors)
    {
        int before = errors.Count;
        List<Element> inner = ElementsOf(file, facts.Get(ElementMembers.Driveline), errors);
        if (inner.Count > 0)
        {
            return Branch.Of(facts.Get(ElementMembers.BranchName)!, facts.Get(ElementMembers.PowerShare)!, [.. inner]);
        }

        if (errors.Count == before)
        {
            errors.Add(facts.Contradiction(ElementMembers.Driveline, "A branch needs at least one element; got none."));
        }

        return null;
    }

    private static Part PartOf(CaseFile file, CaseObject facts)
    {
        Part part = Part.Of(KindOf(CaseElements.KindOf(facts)), CaseElements.NameOf(facts)!).At(facts.Place);
        part = facts.Get(ElementMembers.Ratio) is { } ratio ? part.WithRatio(ratio) : part;
        part = facts.Get(ElementMembers.Efficiency) is { } efficiency ? part.WithEfficiency(efficiency) : part;
        part = facts.Get(ElementMembers.Inertia) is { } inertia ? part.WithInertia(inertia) : part;
        part = StiffnessOf(facts) is { } stiffness ? part.WithStiffness(stiffness) : part;
        part = facts.Get(ElementMembers.Damping) is { } damping ? part.WithDamping(damping) : part;
        RotationalSpeed? ptoSpeed = file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed);
        return LimitOf(facts, ptoSpeed) is { } limit ? part.WithLimit(limit) : part;
    }

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

    internal static ShaftSection? SectionOf(CaseObject facts) =>
        facts.Get(ElementMembers.SplineRootDiameter) is { } root ? ShaftSection.Splined(root) : BodyOf(facts);

    // A shaft twists along its body, not at the root of its splines.
    private static ShaftSection? BodyOf(CaseObject facts) => facts.Get(ElementMembers.OuterDiameter) is not { } outer ? null
        : facts.Get(ElementMembers.InnerDiameter) is { } inner && inner > Length.Zero ? ShaftSection.Hollow(outer, inner)
        : ShaftSection.Solid(outer);
}
