using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of a shear bolt.</summary>
internal static class BoltChecks
{
    public static void Fitted(CaseDraft draft, CaseWalk walk)
    {
        OneBody(draft, walk, ShearBoltMembers.Thread, ShearBoltMembers.PinDiameter, ShearBoltMembers.SpringPin);
        Neck(draft, walk, ShearBoltMembers.PinDiameter, ShearBoltMembers.NeckDiameter);
        Size(draft, walk, ShearBoltMembers.Thread, ShearBoltMembers.Grade);
        Hole(draft, walk);

        double? radius = draft.Value<double>(ShearBoltMembers.Radius);
        double? circle = draft.Value<double>(ShearBoltMembers.BoltCircleDiameter);
        if (Math.Abs((circle / 2 / radius ?? 1) - 1) > 0.01)
        {
            ElementChecks.Contradiction(
                walk,
                draft,
                ShearBoltMembers.BoltCircleDiameter,
                "The bolt circle " + Shown(circle) + " is not twice the radius " + Shown(radius) + "; state one of the two.");
        }
    }

    public static void Specified(CaseDraft draft, CaseWalk walk)
    {
        OneBody(draft, walk, SpecifiedBoltMembers.Thread, SpecifiedBoltMembers.PinDiameter, SpecifiedBoltMembers.SpringPin);
        Neck(draft, walk, SpecifiedBoltMembers.PinDiameter, SpecifiedBoltMembers.NeckDiameter);
        Size(draft, walk, SpecifiedBoltMembers.Thread, SpecifiedBoltMembers.Grade);
    }

    /// <summary>A bolt is a thread, a plain pin or a spring pin.</summary>
    private static void OneBody(CaseDraft draft, CaseWalk walk, params Member[] bodies)
    {
        Member[] stated = bodies.Where(draft.IsStated).OrderBy(draft.OffsetOf).ToArray();
        for (int i = 1; i < stated.Length; i++)
        {
            ElementChecks.Contradiction(
                walk,
                draft,
                stated[i],
                "A shear bolt has a thread, a pin diameter or a spring pin; \"" + stated[0].Name + "\" is stated already.");
        }
    }

    private static void Neck(CaseDraft draft, CaseWalk walk, Member pin, Member neck)
    {
        if (draft.Value<double>(neck) > draft.Value<double>(pin))
        {
            ElementChecks.Contradiction(
                walk,
                draft,
                neck,
                "The neck " + Shown(draft.Value<double>(neck)) + " must not be thicker than the pin " + Shown(draft.Value<double>(pin)) + ".");
        }
    }

    private static void Size(CaseDraft draft, CaseWalk walk, Member thread, Member grade)
    {
        if (BoltTexts.SizeProblem(draft.Reference<string>(thread), draft.Reference<string>(grade)) is { } problem)
        {
            ElementChecks.Contradiction(walk, draft, grade, problem);
        }
    }

    /// <summary>The bolt is in its hole; a caliper may read 2 % too little.</summary>
    private static void Hole(CaseDraft draft, CaseWalk walk)
    {
        double? bolt = BoltTexts.Thread(draft.Reference<string>(ShearBoltMembers.Thread))?.MajorDiameterM ?? draft.Value<double>(ShearBoltMembers.PinDiameter);
        double? hole = draft.Value<double>(ShearBoltMembers.HoleDiameter);
        if (hole < bolt * 0.98)
        {
            ElementChecks.Contradiction(
                walk, draft, ShearBoltMembers.HoleDiameter, "The hole " + Shown(hole) + " must not be narrower than the bolt in it, " + Shown(bolt) + ".");
        }
    }

    private static string Shown(double? m) => QuantityText.Format(m ?? 0, Dimension.Length);
}
