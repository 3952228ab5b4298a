using Driveline.Chains;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The chain of a case: its elements in order, behind the PTO stub that its tractor implies.</summary>
internal static class CaseChain
{
    public static DrivelineChain? Of(CaseFile file, List<CaseError> errors)
    {
        var elements = new List<Element>();
        if (Stub(file.Tractor) is { } stub)
        {
            elements.Add(stub);
        }

        AddElements(file.Driveline, "driveline", elements, errors);
        if (elements.Count == 0)
        {
            elements.Add(Part.Of(PartKind.PtoStub, "PTO stub"));
        }

        try
        {
            return DrivelineChain.Of([.. elements]);
        }
        catch (ArgumentException contradiction)
        {
            errors.Add(Contradiction("driveline", contradiction));
            return null;
        }
    }

    public static CaseError Contradiction(string path, ArgumentException contradiction) =>
        new(CaseErrorKind.Contradiction, path, 0, 0, FirstLine(contradiction.Message), null, null, null);

    private static Part? Stub(TractorFacts? tractor)
    {
        if (tractor is null)
        {
            return null;
        }

        PtoType? type = tractor.PtoType is { } number ? PtoTypes.Of(number) : null;
        Part stub = Part.Of(PartKind.PtoStub, type is null ? "PTO stub" : FormattableString.Invariant($"PTO stub (type {type.Number})"));
        return tractor.StubDamagedAt is { } damagedAt ? stub.WithDamageTorque(damagedAt)
            : type is not null && tractor.StubYieldStrength is { } yield ? stub.WithLimit(PartLimit.Section(StubStrength.Of(type, yield).Torque))
            : type is not null ? stub.WithLimit(PartLimit.ImpliedByPtoType(StubStrength.Of(type).Torque))
            : null;
    }

    private static void AddElements(IReadOnlyList<DrivelineElement> facts, string path, List<Element> elements, List<CaseError> errors)
    {
        for (int k = 0; k < facts.Count; k++)
        {
            string at = FormattableString.Invariant($"{path}[{k}]");
            try
            {
                elements.Add(ElementOf(facts[k], at, errors));
            }
            catch (ArgumentException contradiction)
            {
                errors.Add(Contradiction(at, contradiction));
            }
        }
    }

    private static Element ElementOf(DrivelineElement facts, string path, List<CaseError> errors)
    {
        if (facts.ShearBolt is { } bolt)
        {
            return CaseBolt.Device(bolt);
        }

        if (facts.Kind == ElementKind.Branch)
        {
            var inner = new List<Element>();
            AddElements(facts.Driveline, path + ".driveline", inner, errors);
            return Branch.Of(facts.Name!, facts.PowerShare!, [.. inner]);
        }

        Part part = Part.Of(KindOf(facts.Kind), facts.Name!);
        part = facts.Ratio is { } ratio ? part.WithRatio(ratio) : part;
        part = facts.Efficiency is { } efficiency ? part.WithEfficiency(efficiency) : part;
        part = facts.Inertia is { } inertia ? part.WithInertia(inertia) : part;
        return LimitOf(facts) is { } limit ? part.WithLimit(limit) : part;
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

    private static PartLimit? LimitOf(DrivelineElement facts)
    {
        switch (facts.LimitUsed)
        {
            case LimitSource.DamagedAt:
                return PartLimit.DamageTorque(facts.DamagedAt!);
            case LimitSource.Geometry:
                StressBand? yield = facts.YieldStrength ?? YieldOf(facts.Material);
                return yield is null ? null : PartLimit.Section(TorsionCapacity.Of(SectionOf(facts), yield).Torque);
            case LimitSource.RatedTorque:
                return PartLimit.RatedTimes(facts.RatedTorque!.Value, facts.OverloadFactor!, facts.OverloadSource is not null);
            default:
                return null;
        }
    }

    private static StressBand? YieldOf(string? material) => ShaftMaterials.TryOf(material, out SteelGrade? steel)
        ? steel!.Yield
        : throw new ArgumentException(
            "Material \"" + material + "\" is not held here; held: " + string.Join("; ", ShaftMaterials.All.Select(s => s.Name)) + ". State yieldStrength instead.", nameof(material));

    private static ShaftSection SectionOf(DrivelineElement facts) => facts.SplineRootDiameter is { } root ? ShaftSection.Splined(root)
        : facts.InnerDiameter is { } inner && inner > Length.Zero ? ShaftSection.Hollow(facts.OuterDiameter!.Value, inner)
        : ShaftSection.Solid(facts.OuterDiameter!.Value);

    private static string FirstLine(string message)
    {
        int end = message.IndexOf(" (Parameter", StringComparison.Ordinal);
        end = end >= 0 ? end : message.IndexOfAny(['\r', '\n']);
        return end >= 0 ? message.Substring(0, end) : message;
    }
}
