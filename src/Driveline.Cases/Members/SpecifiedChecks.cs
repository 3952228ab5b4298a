namespace Driveline.Cases.Members;

/// <summary>What the manual specifies must say for which device it is: at the root only where there is one of the kind.</summary>
internal static class SpecifiedChecks
{
    public static void AtRoot(CaseDraft draft, CaseWalk walk, DrivelineElement[] elements)
    {
        SpecifiedFacts? root = draft.Reference<SpecifiedFacts>(CaseFileMembers.Specified);
        Check(draft, walk, root?.ShearBolt is not null, SpecifiedMembers.ShearBolt, [.. elements.Where(e => e.ShearBolt is not null)], "shear bolts", "{ \"shearBolt\": {…}, \"specified\": { \"shearBolt\": {…} } }");
        Check(draft, walk, root?.SlipTorque is not null, SpecifiedMembers.SlipTorque, [.. elements.Where(e => e.SlipClutch is not null || e.CutOut is not null)], "clutches", "{ \"slipClutch\": {…}, \"specified\": { \"slipTorque\": … } }");
    }

    /// <summary>An element's own specification is of its own kind.</summary>
    public static void OfElement(CaseDraft draft, CaseWalk walk)
    {
        if (draft.Reference<SpecifiedFacts>(ElementMembers.Specified) is not { } specified)
        {
            return;
        }

        bool isBolt = draft.IsStated(ElementMembers.ShearBolt);
        if (isBolt ? specified.SlipTorque is not null : specified.ShearBolt is not null)
        {
            ElementChecks.Contradiction(
                walk, draft, ElementMembers.Specified, isBolt ? "For a shear bolt \"specified\" holds a \"shearBolt\", no \"slipTorque\"." : "For a clutch \"specified\" holds a \"slipTorque\", no \"shearBolt\".");
        }
    }

    private static void Check(CaseDraft draft, CaseWalk walk, bool isStated, Member member, DrivelineElement[] fitted, string what, string example)
    {
        string? message = !isStated ? null
            : fitted.Length > 1 ? FormattableString.Invariant(
                $"The driveline has {fitted.Length} {what}, and this does not say for which of them it is. State \"specified\" inside the element, as in {example}; at the root it is for the only one.")
            : fitted.Any(e => e.Specified is not null) ? "This is stated at the root and inside the element: state it once."
            : null;
        if (message is not null)
        {
            walk.Enter(CaseFileMembers.Specified.Name);
            walk.Enter(member.Name);
            walk.Error(CaseErrorKind.Contradiction, draft.OffsetOf(CaseFileMembers.Specified), message);
            walk.Leave();
            walk.Leave();
        }
    }
}
