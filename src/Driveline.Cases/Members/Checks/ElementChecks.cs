using Driveline.Pto;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of one driveline element.</summary>
internal static class ElementChecks
{
    public static void Across(CaseObject facts, CaseWalk walk)
    {
        Member? first = FirstNaming(facts, out int count);
        if (first is null)
        {
            string kinds = string.Join(", ", facts.Table.Naming.Select(m => m.Name));
            walk.Error(
                CaseErrorKind.MissingMember,
                facts.Offset,
                "An element needs one member that names its kind, such as \"shaft\": \"drive tube\"; it may be " + kinds + ".",
                kinds,
                null,
                null);
            return;
        }

        if (count == 1)
        {
            Belonging(facts, walk, first);
        }
        else
        {
            SeveralKinds(facts, walk, first);
        }

        Limits(facts, walk);
        SpecifiedChecks.OfElement(facts, walk);
    }

    private static void SeveralKinds(CaseObject facts, CaseWalk walk, Member first)
    {
        foreach (Member other in facts.Table.Naming.Where(m => m != first && facts.IsStated(m)))
        {
            walk.Contradiction(facts, other,
                "An element has one kind: it is named \"" + first.Name + "\" and \"" + other.Name + "\"; make them two elements.");
        }
    }

    // Of those that are stated, the one that stands first in the file.
    private static Member? FirstNaming(CaseObject facts, out int count)
    {
        count = 0;
        Member? first = null;
        IReadOnlyList<Member> naming = facts.Table.Naming;
        for (int k = 0; k < naming.Count; k++)
        {
            if (facts.IsStated(naming[k]))
            {
                count++;
                first = first is null || facts.OffsetOf(naming[k]) < facts.OffsetOf(first) ? naming[k] : first;
            }
        }

        return first;
    }

    private static void Belonging(CaseObject facts, CaseWalk walk, Member naming)
    {
        for (int k = 0; k < facts.StatedCount; k++)
        {
            Member member = facts.StatedAt(k);
            if (member.NamedKind == ElementKind.NotKnown && !member.AppliesTo(naming.NamedKind))
            {
                NotBelonging(facts, walk, member, naming);
            }
        }

        IReadOnlyList<Member> required = facts.Table.Required;
        for (int k = 0; k < required.Count; k++)
        {
            if (!facts.IsStated(required[k]) && required[k].AppliesTo(naming.NamedKind))
            {
                walk.Missing(facts, required[k]);
            }
        }
    }

    private static void NotBelonging(CaseObject facts, CaseWalk walk, Member member, Member naming)
    {
        string owners = string.Join(", ", facts.Table.Naming.Where(m => member.AppliesTo(m.NamedKind)).Select(m => m.Name));
        walk.NotBelonging(facts, member,
            "\"" + member.Name + "\" does not belong to \"" + naming.Name + "\"; it belongs to " + owners + ".", owners);
    }

    private static void Limits(CaseObject facts, CaseWalk walk)
    {
        double? outer = facts.Si(ElementMembers.OuterDiameter);
        double? inner = facts.Si(ElementMembers.InnerDiameter);
        double? root = facts.Si(ElementMembers.SplineRootDiameter);
        if (inner >= outer || inner >= root)
        {
            walk.Contradiction(facts, ElementMembers.InnerDiameter, "The bore " + MemberChecks.Shown(inner)
                + " must be smaller than the outer diameter or spline root " + MemberChecks.Shown(inner >= outer ? outer : root) + ".");
        }

        if (root > outer)
        {
            walk.Contradiction(facts, ElementMembers.SplineRootDiameter, "The spline root " + MemberChecks.Shown(root)
                + " must not be larger than the outer diameter " + MemberChecks.Shown(outer) + ".");
        }

        MemberChecks.Needs(facts, walk, ElementMembers.InnerDiameter, ElementMembers.OuterDiameter, ElementMembers.SplineRootDiameter);
        MemberChecks.Needs(facts, walk, ElementMembers.FatigueCategory, ElementMembers.OuterDiameter, ElementMembers.SplineRootDiameter);
        MemberChecks.Needs(facts, walk, ElementMembers.OverloadFactor, ElementMembers.RatedTorque, ElementMembers.RatedPower);
        MemberChecks.Needs(facts, walk, ElementMembers.RatedPower, ElementMembers.RatedSpeed);
        MemberChecks.Needs(facts, walk, ElementMembers.RatedSpeed, ElementMembers.RatedPower);
        if (facts.IsStated(ElementMembers.RatedTorque) && facts.IsStated(ElementMembers.RatedPower))
        {
            walk.Contradiction(facts, ElementMembers.RatedPower, "State ratedTorque or ratedPower, not both.");
        }
        MemberChecks.Needs(facts, walk, ElementMembers.OverloadSource, ElementMembers.OverloadFactor);
        MemberChecks.Bounded(facts, walk, ElementMembers.PowerShare);
        bool needsSteel = (outer ?? root) is not null && !facts.IsStated(ElementMembers.DamagedAt)
            && !facts.IsStated(ElementMembers.YieldStrength);
        if (needsSteel && facts.Get(ElementMembers.Material) is { Held: null })
        {
            walk.Contradiction(
                facts,
                ElementMembers.Material,
                "Material \"" + CaseWalk.Shown(facts.Written(ElementMembers.Material)!) + "\" is not held here; held: "
                + string.Join("; ", ShaftMaterials.All.Select(s => s.Name)) + ". State yieldStrength instead.");
        }
    }
}
