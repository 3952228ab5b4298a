using System.Globalization;
using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Pto;

namespace Driveline.Cases.Questions;

/// <summary>The chain of a case: its elements in order, behind the PTO stub that its tractor implies.</summary>
internal static class CaseChain
{
    /// <summary>The chain, its slip clutches in their place; null, with errors, when facts contradict each other.</summary>
    public static DrivelineChain? Of(CaseFile file, List<CaseError> errors) => Of(file, errors, null);

    /// <summary>The same, with the elements of facts that were mapped before.</summary>
    public static DrivelineChain? Of(CaseFile file, List<CaseError> errors, SharedMapping? known) =>
        Laid(file, errors, known) is not { } chain ? null
            : !chain.HasFittedClutch ? chain
            : chain.InPlace(file.Facts.Get(CaseFileMembers.Tractor)?.Get(TractorMembers.PtoSpeed), CaseWork.Stated(file, chain)?.Torque);

    /// <summary>The chain before its clutches are judged in their place.</summary>
    public static DrivelineChain? Laid(CaseFile file, List<CaseError> errors, SharedMapping? known)
    {
        List<Element> elements = ElementsOf(file, file.Facts.Get(CaseFileMembers.Driveline), errors, known);
        if (errors.Count > 0)
        {
            return null;
        }

        if ((known is { IsStubShared: true } ? known.Stub : Stub(file.Facts.Get(CaseFileMembers.Tractor))) is { } stub)
        {
            elements.Insert(0, stub);
        }

        return known?.ChainOf(elements) ?? DrivelineChain.Of(
            elements.Count > 0 ? [.. elements] : [Part.Of(PartKind.PtoStub, "PTO stub").At(FactPlace.Of("tractor", []))]);
    }

    /// <summary>The element of facts alone; null, with errors, when they contradict each other.</summary>
    public static Element? Mapped(CaseFile file, CaseObject facts) => ElementOf(file, facts, [], null);

    /// <summary>The PTO stub that a tractor implies; null when there is no tractor.</summary>
    public static Part? Stub(CaseObject? tractor)
    {
        if (tractor is null)
        {
            return null;
        }

        PtoType? type = tractor.Get(TractorMembers.PtoType) is { } number ? PtoTypes.Of(number) : null;
        string name = type is null ? "PTO stub" : "PTO stub (type " + type.Number.ToString(CultureInfo.InvariantCulture) + ")";
        Part stub = Part.Of(PartKind.PtoStub, name).At(tractor.Place);
        return tractor.Get(TractorMembers.StubDamagedAt) is { } damagedAt ? stub.WithDamageTorque(damagedAt)
            : type is not null && tractor.Get(TractorMembers.StubYieldStrength) is { } yield
                ? stub.WithLimit(PartLimit.Section(StubStrength.Of(type, yield).Torque))
            : type is not null ? stub.WithLimit(PartLimit.ImpliedByPtoType(StubStrength.Of(type).Torque))
            : null;
    }

    private static List<Element> ElementsOf(CaseFile file, CaseList facts, List<CaseError> errors, SharedMapping? known)
    {
        int before = errors.Count;
        var elements = new List<Element>(facts.Count + 1);
        foreach (CaseObject element in facts)
        {
            if ((known?.Of(element) ?? ElementOf(file, element, errors, known)) is { } good)
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

    private static Element? ElementOf(CaseFile file, CaseObject facts, List<CaseError> errors, SharedMapping? known)
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

        return CaseElements.KindOf(facts) == ElementKind.Branch ? BranchOf(file, facts, errors, known) : CasePart.Of(file, facts);
    }

    private static Branch? BranchOf(CaseFile file, CaseObject facts, List<CaseError> errors, SharedMapping? known)
    {
        int before = errors.Count;
        List<Element> inner = ElementsOf(file, facts.Get(ElementMembers.Driveline), errors, known);
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
}
