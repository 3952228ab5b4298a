using Driveline.Chains;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>For every position of a chain: the highest torque that can reach it before a device acts.</summary>
/// <remarks>
/// A device between the tractor and the position limits what the tractor sends; the devices between the position and every
/// working end limit what the work can hold, and where the chain branches their torques add. The smaller of the two counts.
/// Behind an element with ratio i and efficiency η: T_behind = T_before · η / i. Across a flywheel or rotor a device guards nothing,
/// nor against one on a neighbouring branch that no device parts from the junction: what it stores loads the position past the device.
/// </remarks>
internal static class GuardReach
{
    /// <summary>Longest chain that is judged without room on the heap.</summary>
    public const int MostOnStack = 64;

    public static void Find(ChainNode[] nodes, Span<Reach> reach)
    {
        FindFromWork(nodes, reach);
        Span<int> stores = nodes.Length <= MostOnStack ? stackalloc int[nodes.Length] : new int[nodes.Length];
        FindStores(nodes, stores);
        FindFromDrive(nodes, stores, reach);
    }

    // On return reach[k] is what the devices at and behind k can hold, at the input of k.
    private static void FindFromWork(ChainNode[] nodes, Span<Reach> reach)
    {
        Span<bool> hasChild = nodes.Length <= MostOnStack ? stackalloc bool[nodes.Length] : new bool[nodes.Length];
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
                Reach before = BeforeElement(in reach[k], nodes[parent], parent);
                reach[parent] = hasChild[parent] ? Reach.Both(in reach[parent], in before) : before;
                hasChild[parent] = true;
            }
        }
    }

    // Adds the devices ahead of each position; parents come first, so a parent's reach is complete when its children need it.
    private static void FindFromDrive(ChainNode[] nodes, Span<int> stores, Span<Reach> reach)
    {
        Span<Reach> ahead = nodes.Length <= MostOnStack ? stackalloc Reach[nodes.Length] : new Reach[nodes.Length];
        for (int k = 0; k < nodes.Length; k++)
        {
            int parent = nodes[k].Parent;
            ahead[k] = Reach.Open;
            if (parent >= 0)
            {
                Reach sent = nodes[parent].Device is { } device ? Reach.First(in ahead[parent], AtOwnPosition(device, parent))
                    : ahead[parent];
                ahead[k] = BehindElement(in sent, nodes[parent], parent);
                int beside = StoreBeside(nodes, stores, k);
                if (beside >= 0 && !ahead[k].IsOpen)
                {
                    ahead[k].Inertia = beside;
                }
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
        Inertia = -1,
    };

    // For each position: a flywheel or rotor at or behind it that no device parts from its input; -1 when there is none.
    private static void FindStores(ChainNode[] nodes, Span<int> stores)
    {
        for (int k = 0; k < nodes.Length; k++)
        {
            stores[k] = -1;
        }

        for (int k = nodes.Length - 1; k >= 0; k--)
        {
            stores[k] = nodes[k].Device is not null ? -1 : nodes[k].Part is { StoresEnergy: true } ? k : stores[k];
            int parent = nodes[k].Parent;
            if (parent >= 0 && stores[k] >= 0)
            {
                stores[parent] = stores[k];
            }
        }
    }

    // Siblings meet at the output of their parent: what one of them stores loads the others past every device ahead.
    private static int StoreBeside(ChainNode[] nodes, Span<int> stores, int index)
    {
        for (int k = nodes[index].Parent + 1; k < nodes.Length; k++)
        {
            if (k != index && nodes[k].Parent == nodes[index].Parent && stores[k] >= 0)
            {
                return stores[k];
            }
        }

        return -1;
    }

    private static Reach BeforeElement(in Reach behind, ChainNode element, int index)
    {
        Reach before = behind;
        if (behind.IsOpen)
        {
            return before;
        }

        before.Inertia = element.Part is { StoresEnergy: true } ? index : behind.Inertia;
        if (element.IsThrough)
        {
            return before;
        }

        if (double.IsNaN(element.OwnRatio))
        {
            return NotKnownAcross(in before);
        }

        before.Band = behind.Band.Times(element.OwnRatio).Over(element.OwnEfficiency);
        before.RestsOnEfficiency |= element.EfficiencyAssumed;
        return before;
    }

    private static Reach BehindElement(in Reach before, ChainNode element, int index)
    {
        Reach behind = before;
        if (before.IsOpen)
        {
            return behind;
        }

        behind.Inertia = element.Part is { StoresEnergy: true } ? index : before.Inertia;
        if (element.IsThrough)
        {
            return behind;
        }

        if (double.IsNaN(element.OwnRatio))
        {
            return NotKnownAcross(in behind);
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
