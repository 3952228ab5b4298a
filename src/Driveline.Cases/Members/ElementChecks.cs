using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of one driveline element.</summary>
internal static class ElementChecks
{
    public static void Across(CaseDraft draft, CaseWalk walk)
    {
        Member[] naming = draft.Table.Members.Where(m => m.NamedKind != ElementKind.NotKnown && draft.IsStated(m)).ToArray();
        if (naming.Length == 0)
        {
            string kinds = string.Join(", ", draft.Table.Members.Where(m => m.NamedKind != ElementKind.NotKnown).Select(m => m.Name));
            walk.Error(
                CaseErrorKind.MissingMember,
                draft.Offset,
                "An element needs one member that names its kind, such as \"shaft\": \"drive tube\"; it may be " + kinds + ".",
                kinds,
                null,
                null);
            return;
        }

        Member first = naming.OrderBy(draft.OffsetOf).First();
        foreach (Member other in naming.Where(m => m != first))
        {
            Contradiction(walk, draft, other, "An element has one kind: it is named \"" + first.Name + "\" and \"" + other.Name + "\"; make them two elements.");
        }

        if (naming.Length == 1)
        {
            Belonging(draft, walk, first);
        }

        Limits(draft, walk);
        SpecifiedChecks.OfElement(draft, walk);
    }

    /// <summary>Reports a member that contradicts another, at the member.</summary>
    public static void Contradiction(CaseWalk walk, CaseDraft draft, Member member, string message)
    {
        walk.Enter(member.Name);
        walk.Error(CaseErrorKind.Contradiction, draft.OffsetOf(member), message);
        walk.Leave();
    }

    private static void Belonging(CaseDraft draft, CaseWalk walk, Member naming)
    {
        foreach (Member member in draft.Table.Members)
        {
            bool belongs = member.AppliesTo(naming.NamedKind);
            if (!belongs && member.NamedKind == ElementKind.NotKnown && draft.IsStated(member))
            {
                string owners = string.Join(", ", draft.Table.Members.Where(m => m.NamedKind != ElementKind.NotKnown && member.AppliesTo(m.NamedKind)).Select(m => m.Name));
                walk.Enter(member.Name);
                walk.Error(
                    CaseErrorKind.UnknownMember,
                    draft.OffsetOf(member),
                    "\"" + member.Name + "\" does not belong to \"" + naming.Name + "\"; it belongs to " + owners + ".",
                    owners,
                    member.Name,
                    null);
                walk.Leave();
            }

            if (belongs && member.IsRequired && !draft.IsStated(member))
            {
                FactsReader.Missing(walk, draft, member);
            }
        }
    }

    private static void Limits(CaseDraft draft, CaseWalk walk)
    {
        double? outer = draft.Value<double>(ElementMembers.OuterDiameter);
        double? inner = draft.Value<double>(ElementMembers.InnerDiameter);
        double? root = draft.Value<double>(ElementMembers.SplineRootDiameter);
        if (inner >= outer || inner >= root)
        {
            Contradiction(walk, draft, ElementMembers.InnerDiameter, "The bore " + Shown(inner) + " must be smaller than the outer diameter or spline root " + Shown(inner >= outer ? outer : root) + ".");
        }

        if (root > outer)
        {
            Contradiction(walk, draft, ElementMembers.SplineRootDiameter, "The spline root " + Shown(root) + " must not be larger than the outer diameter " + Shown(outer) + ".");
        }

        Needs(walk, draft, ElementMembers.InnerDiameter, ElementMembers.OuterDiameter, ElementMembers.SplineRootDiameter);
        Needs(walk, draft, ElementMembers.OverloadFactor, ElementMembers.RatedTorque, ElementMembers.RatedTorque);
        Needs(walk, draft, ElementMembers.OverloadSource, ElementMembers.OverloadFactor, ElementMembers.OverloadFactor);
    }

    private static void Needs(CaseWalk walk, CaseDraft draft, Member member, Member needed, Member orNeeded)
    {
        if (draft.IsStated(member) && !draft.IsStated(needed) && !draft.IsStated(orNeeded))
        {
            string names = needed == orNeeded ? "\"" + needed.Name + "\"" : "\"" + needed.Name + "\" or \"" + orNeeded.Name + "\"";
            Contradiction(walk, draft, member, "\"" + member.Name + "\" means nothing without " + names + "; state that too.");
        }
    }

    private static string Shown(double? m) => QuantityText.Format(m ?? 0, Dimension.Length);
}
