using Driveline.Chains;
using Driveline.Loads;

namespace Driveline.Protection;

/// <summary>The parts that a machine of a kind must have, so that a list without one of them is seen to be incomplete.</summary>
/// <remarks>
/// Common practice, from how these machines are built: every one is driven through universal joints, and a yoke in the list counts as one.
/// A machine of unknown kind has no list and gets no Yes.
/// </remarks>
internal static class ExpectedParts
{
    private static readonly PartKind[] Basic = [PartKind.PtoStub, PartKind.UniversalJoint, PartKind.Shaft];
    private static readonly PartKind[] Geared = [PartKind.PtoStub, PartKind.UniversalJoint, PartKind.Shaft, PartKind.Gearbox];
    private static readonly PartKind[] Rotary =
        [PartKind.PtoStub, PartKind.UniversalJoint, PartKind.Shaft, PartKind.Gearbox, PartKind.Rotor];
    private static readonly PartKind[] Flywheeled =
        [PartKind.PtoStub, PartKind.UniversalJoint, PartKind.Shaft, PartKind.Flywheel, PartKind.Gearbox];

    /// <summary>The kinds of part to expect; empty when the machine is not known.</summary>
    public static PartKind[] For(MachineKind machine) => machine switch
    {
        MachineKind.NotKnown => [],
        MachineKind.RotaryCutter or MachineKind.FlailMower or MachineKind.RotaryTiller or MachineKind.SnowBlower => Rotary,
        MachineKind.SmallSquareBaler => Flywheeled,
        MachineKind.PostHoleAuger or MachineKind.RoundBaler or MachineKind.FeedMixer => Geared,
        _ => Basic,
    };

    /// <summary>True when a driveline has a part of every kind to expect of the machine.</summary>
    public static bool AreAllIn(DrivelineChain chain, MachineKind machine)
    {
        foreach (PartKind expected in For(machine))
        {
            if (!IsIn(chain.Nodes, expected))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsIn(ChainNode[] nodes, PartKind expected)
    {
        for (int k = 0; k < nodes.Length; k++)
        {
            if (nodes[k].Element is Part part && Counts(part.Kind, expected))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when a part of one kind is what is expected of another.</summary>
    internal static bool Counts(PartKind listed, PartKind expected) => listed == expected
        || (expected == PartKind.UniversalJoint && listed == PartKind.Yoke);
}
