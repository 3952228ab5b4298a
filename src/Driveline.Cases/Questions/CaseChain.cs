using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The chain of a case: its elements in order, behind the PTO stub that its tractor implies.</summary>
internal static class CaseChain
{
    public static DrivelineChain? Of(CaseFile file, List<CaseError> errors) => Of(file, errors, []);

    /// <summary>The chain, and its slip clutches with what their place tells of them.</summary>
    public static DrivelineChain? Of(CaseFile file, List<CaseError> errors, List<CaseClutch> clutches)
    {
        var elements = new List<Element>();
        if (Stub(file.Tractor) is { } stub)
        {
            elements.Add(stub);
        }

        int stated = Count(file.Driveline);
        if (stated > ElementsMember.MostInAll)
        {
            string received = FormattableString.Invariant($"{stated}");
            string message = "A driveline may have " + ElementsMember.InAllWords + "; got " + received + ".";
            errors.Add(new CaseError(CaseErrorKind.OutOfRange, "driveline", 0, 0, message, ElementsMember.InAllWords, received, null));
            return null;
        }

        AddElements(file, file.Driveline, "driveline", elements, errors, clutches);
        if (elements.Count == 0)
        {
            elements.Add(Part.Of(PartKind.PtoStub, "PTO stub"));
        }

        try
        {
            return InPlace(file, DrivelineChain.Of([.. elements]), clutches);
        }
        catch (ArgumentException contradiction)
        {
            errors.Add(Contradiction("driveline", contradiction));
            return null;
        }
    }

    public static CaseError Contradiction(string path, ArgumentException contradiction) =>
        new(CaseErrorKind.Contradiction, path, 0, 0, FirstLine(contradiction.Message), null, null, null);

    private static int Count(IReadOnlyList<DrivelineElement> elements) => elements.Sum(e => 1 + Count(e.Driveline));

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

    /// <summary>A clutch gets its speed and heat from its place: ratios before it, rotors behind it, the work it carries.</summary>
    private static DrivelineChain InPlace(CaseFile file, DrivelineChain chain, List<CaseClutch> clutches)
    {
        for (int k = 0; k < clutches.Count; k++)
        {
            double ratio = chain.Nodes[chain.IndexOf(clutches[k].Device)].Ratio;
            RotationalSpeed? speed = file.Tractor?.PtoSpeed is { } pto && !double.IsNaN(ratio) ? pto * ratio : null;
            SlipClutchDevice device = ClutchHeat.Of(clutches[k], chain, CaseQuestion.Work(file)?.Torque, speed);
            if (!ReferenceEquals(device, clutches[k].Device))
            {
                chain = chain.With(clutches[k].Device, device);
            }

            clutches[k] = clutches[k].With(device, speed);
        }

        return chain;
    }

    private static void AddElements(
        CaseFile file, IReadOnlyList<DrivelineElement> facts, string path, List<Element> elements, List<CaseError> errors, List<CaseClutch> clutches)
    {
        for (int k = 0; k < facts.Count; k++)
        {
            string at = FormattableString.Invariant($"{path}[{k}]");
            try
            {
                elements.Add(ElementOf(file, facts[k], at, errors, clutches));
            }
            catch (ArgumentException contradiction)
            {
                errors.Add(Contradiction(at, contradiction));
            }
        }
    }

    private static Element ElementOf(CaseFile file, DrivelineElement facts, string path, List<CaseError> errors, List<CaseClutch> clutches)
    {
        if (facts.ShearBolt is { } bolt)
        {
            return CaseBolt.Device(bolt);
        }

        if (facts.SlipClutch is { } slipClutch)
        {
            CaseClutch clutch = CaseClutch.Of(slipClutch, file.Date);
            clutches.Add(clutch);
            return clutch.Device;
        }

        if (facts.CutOut is { } cutOut)
        {
            return CaseCutOut.Device(cutOut, file.Date);
        }

        if (facts.Kind == ElementKind.Branch)
        {
            var inner = new List<Element>();
            AddElements(file, facts.Driveline, path + ".driveline", inner, errors, clutches);
            return Branch.Of(facts.Name!, facts.PowerShare!, [.. inner]);
        }

        Part part = Part.Of(KindOf(facts.Kind), facts.Name!);
        part = facts.Ratio is { } ratio ? part.WithRatio(ratio) : part;
        part = facts.Efficiency is { } efficiency ? part.WithEfficiency(efficiency) : part;
        part = facts.Inertia is { } inertia ? part.WithInertia(inertia) : part;
        part = StiffnessOf(facts) is { } stiffness ? part.WithStiffness(stiffness) : part;
        part = facts.Damping is { } damping ? part.WithDamping(damping) : part;
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

    // A stated stiffness, else that of the section over the length, in steel.
    private static StiffnessBand? StiffnessOf(DrivelineElement facts) => facts.Stiffness
        ?? (facts.Length is { } length && (facts.OuterDiameter is not null || facts.SplineRootDiameter is not null)
            ? LineStiffness.Of(BodyOf(facts), length).Stiffness
            : null);

    // A shaft twists along its body, not at the root of its splines.
    private static ShaftSection BodyOf(DrivelineElement facts) => facts.OuterDiameter is null ? SectionOf(facts)
        : facts.InnerDiameter is { } inner && inner > Length.Zero ? ShaftSection.Hollow(facts.OuterDiameter.Value, inner)
        : ShaftSection.Solid(facts.OuterDiameter.Value);

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
