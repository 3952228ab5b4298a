using Driveline.Chains;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>For every position of a chain: the highest torque that can reach it before a device acts.</summary>
/// <remarks>
/// A device between the tractor and the position limits what the tractor sends; the devices between the position and every
/// working end limit what the work can hold, and where the chain branches their torques add. The smaller of the two counts.
/// Behind an element with ratio i and efficiency η: T_behind = T_before · η / i.
/// </remarks>
internal static class GuardReach
{
    public static void Find(ChainNode[] nodes, Span<Reach> reach)
    {
        FindFromWork(nodes, reach);
        FindFromDrive(nodes, reach);
    }

    // On return reach[k] is what the devices at and behind k can hold, at the input of k.
    private static void FindFromWork(ChainNode[] nodes, Span<Reach> reach)
    {
        Span<bool> hasChild = nodes.Length <= 64 ? stackalloc bool[64] : new bool[nodes.Length];
        for (int k = nodes.Length - 1; k >= 0; k--)
        {
            if (!hasChild[k])
            {
                reach[k] = Reach.Open;
            }

            if (nodes[k].Device is { } device)
            {
                reach[k] = Reach.First(AtOwnPosition(device, k), in reach[k]);
            }

            int parent = nodes[k].Parent;
            if (parent >= 0)
            {
                Reach before = BeforeElement(in reach[k], in nodes[parent]);
                reach[parent] = hasChild[parent] ? Reach.Both(in reach[parent], in before) : before;
                hasChild[parent] = true;
            }
        }
    }

    // Adds the devices ahead of each position; parents come first, so a parent's reach is complete when its children need it.
    private static void FindFromDrive(ChainNode[] nodes, Span<Reach> reach)
    {
        Span<Reach> ahead = new Reach[nodes.Length];
        for (int k = 0; k < nodes.Length; k++)
        {
            int parent = nodes[k].Parent;
            ahead[k] = Reach.Open;
            if (parent >= 0)
            {
                Reach sent = nodes[parent].Device is { } device ? Reach.First(in ahead[parent], AtOwnPosition(device, parent)) : ahead[parent];
                ahead[k] = BehindElement(in sent, in nodes[parent]);
            }

            reach[k] = Reach.First(in ahead[k], in reach[k]);
        }
    }

    private static Reach AtOwnPosition(ProtectiveDevice device, int index) => new()
    {
        Band = device.Breakaway?.SiBand ?? new Band(0, double.PositiveInfinity, double.PositiveInfinity),
        HasUnknown = device.Breakaway is null,
        MayActEarlier = device.Breakaway is not { HasExpected: true } && !device.IsStuck,
        IsBarred = device.GuardBars.Count > 0,
        Device = index,
    };

    private static Reach BeforeElement(in Reach behind, in ChainNode element)
    {
        Reach before = behind;
        if (behind.IsOpen)
        {
            return before;
        }

        if (double.IsNaN(element.OwnRatio))
        {
            return NotKnownAcross(in behind);
        }

        before.Band = behind.Band.Times(element.OwnRatio).Over(element.OwnEfficiency);
        before.RestsOnEfficiency |= element.EfficiencyAssumed;
        return before;
    }

    private static Reach BehindElement(in Reach before, in ChainNode element)
    {
        Reach behind = before;
        if (before.IsOpen)
        {
            return behind;
        }

        behind.PassesInertia |= element.Part?.StoresEnergy ?? false;
        if (double.IsNaN(element.OwnRatio))
        {
            return NotKnownAcross(in before);
        }

        // At an efficiency of 1, the most gets through: a default up to 1 can only look worse than the truth.
        behind.Band = before.Band.Times(element.OwnEfficiency).Times(1 / element.OwnRatio);
        return behind;
    }

    private static Reach NotKnownAcross(in Reach known)
    {
        Reach lost = known;
        lost.Band = new Band(0, double.PositiveInfinity, double.PositiveInfinity);
        lost.HasUnknown = true;
        lost.IsBarred = true;
        return lost;
    }
}
