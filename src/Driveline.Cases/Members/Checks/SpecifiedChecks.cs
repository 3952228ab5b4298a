namespace Driveline.Cases.Members;

/// <summary>What the manual specifies must say for which device it is: at the root only where there is one of the kind.</summary>
internal static class SpecifiedChecks
{
    public static void AtRoot(CaseObject facts, CaseWalk walk, IReadOnlyList<CaseObject> elements)
    {
        if (facts.Get(CaseFileMembers.Specified) is not { } root)
        {
            return;
        }

        CaseObject[] bolts = [.. elements.Where(e => e.Get(ElementMembers.ShearBolt) is not null)];
        CaseObject[] clutches =
            [.. elements.Where(e => e.Get(ElementMembers.SlipClutch) is not null || e.Get(ElementMembers.CutOut) is not null)];
        Check(root, walk, SpecifiedMembers.ShearBolt, bolts, "shear bolts",
            "{ \"shearBolt\": {…}, \"specified\": { \"shearBolt\": {…} } }");
        Check(root, walk, SpecifiedMembers.SlipTorque, clutches, "clutches",
            "{ \"slipClutch\": {…}, \"specified\": { \"slipTorque\": … } }");
        Check(root, walk, SpecifiedMembers.SpringLength, clutches, "clutches",
            "{ \"slipClutch\": {…}, \"specified\": { \"springLength\": … } }");
    }

    /// <summary>An element's own specification is of its own kind.</summary>
    public static void OfElement(CaseObject facts, CaseWalk walk)
    {
        if (facts.Get(ElementMembers.Specified) is not { } specified)
        {
            return;
        }

        bool isBolt = facts.IsStated(ElementMembers.ShearBolt);
        bool isOfOther = isBolt ? (specified[SpecifiedMembers.SlipTorque] ?? specified[SpecifiedMembers.SpringLength]) is not null
            : specified[SpecifiedMembers.ShearBolt] is not null;
        if (isOfOther)
        {
            walk.Contradiction(
                facts,
                ElementMembers.Specified,
                isBolt ? "For a shear bolt \"specified\" holds a \"shearBolt\", no \"slipTorque\" and no \"springLength\"."
                    : "For a clutch \"specified\" holds a \"slipTorque\" or a \"springLength\", no \"shearBolt\".");
        }
    }

    private static void Check(CaseObject root, CaseWalk walk, Member member, CaseObject[] fitted, string what, string example)
    {
        string? message = root[member] is null ? null
            : fitted.Length > 1 ? FormattableString.Invariant($"The driveline has {fitted.Length} {what}")
                + ", and this does not say for which of them it is. State \"specified\" inside the element, as in " + example
                + "; at the root it is for the only one."
            : fitted.Any(e => e.Get(ElementMembers.Specified) is not null)
                ? "This is stated at the root and inside the element: state it once."
            : null;
        if (message is not null)
        {
            walk.Contradiction(root, member, message);
        }
    }
}
