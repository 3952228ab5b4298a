namespace Driveline.Cases.Members;

/// <summary>What must hold between the facts of a strike and of an engine.</summary>
internal static class SimulationChecks
{
    public static void AcrossLine(CaseDraft draft, CaseWalk walk)
    {
        Needs(walk, draft, EngineTorqueLineMembers.Fall, EngineTorqueLineMembers.Torque);
        Needs(walk, draft, EngineTorqueLineMembers.Highest, EngineTorqueLineMembers.Torque);
        if (draft.Value<double>(EngineTorqueLineMembers.Torque) > draft.Value<double>(EngineTorqueLineMembers.Highest))
        {
            ElementChecks.Contradiction(walk, draft, EngineTorqueLineMembers.Highest, "The highest torque of the engine must not be below its torque at work.");
        }
    }

    public static void AcrossStrike(CaseDraft draft, CaseWalk walk)
    {
        Needs(walk, draft, StrikeMembers.Travel, StrikeMembers.Torque);
        Needs(walk, draft, StrikeMembers.Radius, StrikeMembers.Force);
        Needs(walk, draft, StrikeMembers.Distance, StrikeMembers.Force);
        Needs(walk, draft, StrikeMembers.Damping, StrikeMembers.Stiffness);
        Needs(walk, draft, StrikeMembers.SwingTorque, StrikeMembers.Swing);
        if (draft.IsStated(StrikeMembers.Torque) && draft.IsStated(StrikeMembers.Force))
        {
            ElementChecks.Contradiction(walk, draft, StrikeMembers.Force, "What is struck gives way at a torque or at a force with its radius; state one of them.");
        }

        StrikeKind kind = draft.Value<StrikeKind>(StrikeMembers.Kind) ?? StrikeKind.NotKnown;
        Belongs(walk, draft, kind, StrikeMembers.Torque, StrikeKind.Yielding, StrikeKind.SwingBack);
        Belongs(walk, draft, kind, StrikeMembers.Force, StrikeKind.Yielding, StrikeKind.SwingBack);
        Belongs(walk, draft, kind, StrikeMembers.Stiffness, StrikeKind.Springy, StrikeKind.Springy);
        Belongs(walk, draft, kind, StrikeMembers.Swing, StrikeKind.SwingBack, StrikeKind.SwingBack);
    }

    private static void Needs(CaseWalk walk, CaseDraft draft, Member member, Member needed)
    {
        if (draft.IsStated(member) && !draft.IsStated(needed))
        {
            ElementChecks.Contradiction(walk, draft, member, "\"" + member.Name + "\" means nothing without \"" + needed.Name + "\"; state that too.");
        }
    }

    private static void Belongs(CaseWalk walk, CaseDraft draft, StrikeKind kind, Member member, StrikeKind first, StrikeKind second)
    {
        if (draft.IsStated(member) && kind != StrikeKind.NotKnown && kind != first && kind != second)
        {
            ElementChecks.Contradiction(walk, draft, member, "\"" + member.Name + "\" does not belong to a strike of kind " + kind + "; it belongs to " + (first == second ? first.ToString() : first + " and " + second) + ".");
        }
    }
}
