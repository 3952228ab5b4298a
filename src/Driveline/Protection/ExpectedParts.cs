using Driveline.Chains;
using Driveline.Loads;

namespace Driveline.Protection;

/// <summary>The parts that a machine of a kind must have, so that a list without one of them is seen to be incomplete.</summary>
/// <remarks>Common practice, from how these machines are built. A machine of unknown kind has no list and gets no Yes.</remarks>
public static class ExpectedParts
{
    private static readonly PartKind[] Basic = [PartKind.PtoStub, PartKind.Shaft];
    private static readonly PartKind[] Geared = [PartKind.PtoStub, PartKind.Shaft, PartKind.Gearbox];
    private static readonly PartKind[] Rotary = [PartKind.PtoStub, PartKind.Shaft, PartKind.Gearbox, PartKind.Rotor];
    private static readonly PartKind[] Flywheeled = [PartKind.PtoStub, PartKind.Shaft, PartKind.Flywheel, PartKind.Gearbox];

    /// <summary>The kinds of part to expect; empty when the machine is not known.</summary>
    public static IReadOnlyList<PartKind> For(MachineKind machine) => machine switch
    {
        MachineKind.NotKnown => [],
        MachineKind.RotaryCutter or MachineKind.FlailMower or MachineKind.RotaryTiller or MachineKind.SnowBlower => Rotary,
        MachineKind.SmallSquareBaler => Flywheeled,
        MachineKind.PostHoleAuger or MachineKind.RoundBaler or MachineKind.FeedMixer => Geared,
        _ => Basic,
    };
}
