using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the facts of a strike and of an engine.</summary>
internal static class SimulationChecks
{
    public static void AcrossLine(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Needs(facts, walk, EngineTorqueLineMembers.Fall, EngineTorqueLineMembers.Torque);
        MemberChecks.Needs(facts, walk, EngineTorqueLineMembers.Highest, EngineTorqueLineMembers.Torque);
        if (facts.Si(EngineTorqueLineMembers.Torque) > facts.Si(EngineTorqueLineMembers.Highest))
        {
            walk.Contradiction(
                facts, EngineTorqueLineMembers.Highest, "The highest torque of the engine must not be below its torque at work.");
        }
    }

    public static void AcrossStrike(CaseObject facts, CaseWalk walk)
    {
        MemberChecks.Needs(facts, walk, StrikeMembers.Travel, StrikeMembers.Torque);
        MemberChecks.Needs(facts, walk, StrikeMembers.Radius, StrikeMembers.Force, StrikeMembers.Thickness);
        MemberChecks.Needs(facts, walk, StrikeMembers.Distance, StrikeMembers.Force);
        MemberChecks.Needs(facts, walk, StrikeMembers.Damping, StrikeMembers.Stiffness);
        MemberChecks.Needs(facts, walk, StrikeMembers.SwingTorque, StrikeMembers.Swing);
        MemberChecks.Needs(facts, walk, StrikeMembers.Thickness, StrikeMembers.Radius);
        MemberChecks.Needs(facts, walk, StrikeMembers.Thickness, StrikeMembers.Force, StrikeMembers.Torque);
        MemberChecks.Needs(facts, walk, StrikeMembers.Passes, StrikeMembers.Swing);
        Passes(facts, walk);
        if (facts.IsStated(StrikeMembers.Torque) && facts.IsStated(StrikeMembers.Force))
        {
            walk.Contradiction(
                facts, StrikeMembers.Force, "What is struck gives way at a torque or at a force with its radius; state one of them.");
        }

        StrikeKind kind = facts.Get(StrikeMembers.Kind);
        Belongs(facts, walk, kind, StrikeMembers.Torque, StrikeKind.Yielding, StrikeKind.SwingBack);
        Belongs(facts, walk, kind, StrikeMembers.Force, StrikeKind.Yielding, StrikeKind.SwingBack);
        Belongs(facts, walk, kind, StrikeMembers.Stiffness, StrikeKind.Springy, StrikeKind.Springy);
        Belongs(facts, walk, kind, StrikeMembers.Swing, StrikeKind.SwingBack, StrikeKind.SwingBack);
        double? yields = facts.Si(StrikeMembers.Torque) ?? (facts.Si(StrikeMembers.Force) * facts.Si(StrikeMembers.Radius));
        if (facts.Si(StrikeMembers.SwingTorque) is { } swing && swing > yields)
        {
            walk.Contradiction(
                facts,
                StrikeMembers.SwingTorque,
                "The torque while the blades swing back, " + QuantityText.Format(swing, Dimension.Torque)
                + ", must be at most that at which what is struck gives way, " + QuantityText.Format(yields.Value, Dimension.Torque) + ".");
        }
    }

    private static void Passes(CaseObject facts, CaseWalk walk)
    {
        if (facts.Get(StrikeMembers.Passes) != true)
        {
            return;
        }

        foreach (Member member in new Member[] { StrikeMembers.Torque, StrikeMembers.Force })
        {
            MemberChecks.Refuse(facts, walk, member, true, "Blades that fold over it and pass never press on it with that.");
        }

        if (facts.Si(StrikeMembers.SwingTorque) == 0)
        {
            walk.Contradiction(facts, StrikeMembers.SwingTorque, "Blades that fold over something take a torque above 0 N·m.");
        }
    }

    private static void Belongs(CaseObject facts, CaseWalk walk, StrikeKind kind, Member member, StrikeKind first, StrikeKind second)
    {
        if (facts.IsStated(member) && kind != StrikeKind.NotKnown && kind != first && kind != second)
        {
            walk.Contradiction(facts, member, "\"" + member.Name + "\" does not belong to a strike of kind " + kind + "; it belongs to "
                + (first == second ? first.ToString() : first + " and " + second) + ".");
        }
    }
}
