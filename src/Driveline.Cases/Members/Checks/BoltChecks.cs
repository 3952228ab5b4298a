namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of a shear bolt, each contradiction at its member.</summary>
internal static class BoltChecks
{
    public static void Fitted(CaseObject facts, CaseWalk walk)
    {
        OneBody(facts, walk, ShearBoltMembers.Bolt);
        MemberChecks.Report(facts, walk, BoltFacts.Fitted(facts, null).Conflicts);
    }

    public static void Specified(CaseObject facts, CaseWalk walk)
    {
        OneBody(facts, walk, SpecifiedBoltMembers.Bolt);
        MemberChecks.Report(facts, walk, BoltFacts.Stated(facts, SpecifiedBoltMembers.Bolt).Conflicts);
    }

    /// <summary>A bolt is a thread, a plain pin or a spring pin.</summary>
    private static void OneBody(CaseObject facts, CaseWalk walk, BoltRows rows)
    {
        int count = (facts.IsStated(rows.Thread) ? 1 : 0) + (facts.IsStated(rows.PinDiameter) ? 1 : 0)
            + (facts.IsStated(rows.SpringPin) ? 1 : 0);
        if (count < 2)
        {
            return;
        }

        Member[] bodies = [rows.Thread, rows.PinDiameter, rows.SpringPin];
        Member[] stated = bodies.Where(facts.IsStated).OrderBy(facts.OffsetOf).ToArray();
        for (int i = 1; i < stated.Length; i++)
        {
            walk.Contradiction(
                facts, stated[i],
                "A shear bolt has a thread, a pin diameter or a spring pin; \"" + stated[0].Name + "\" is stated already.");
        }
    }
}
