using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;

namespace Driveline.Protection;

/// <summary>The cautions that go with every verdict, and those of the machine and its devices; no renderer may drop them.</summary>
internal static class VerdictCautions
{
    public static readonly Caution[] Always =
    [
        Caution.StopAndKeyOut,
        Caution.GuardsOn,
        Caution.ManualDecides,
        Caution.StrongerIsAChange,
        Caution.LicensedPractice,
    ];

    /// <summary>What stands before those of the devices.</summary>
    private static readonly Caution[] BeforeDevices = [Caution.StopAndKeyOut, Caution.GuardsOn];

    /// <summary>Of a bolt that is taken out while the hub is turned.</summary>
    private static readonly Caution[] Bolt = [Caution.SupportHalfShafts];

    /// <summary>Of a clutch that is slipped, gets hot and is set.</summary>
    private static readonly Caution[] Clutch =
        [Caution.BystandersAway, Caution.HotClutch, Caution.HotClutchDryGrass, Caution.NeverTighter];

    /// <summary>Of a shaft that turns in the open within people's reach: they stand before all others.</summary>
    private static readonly Caution[] Entanglement = [Caution.NoProudBolt, Caution.BystandersAway, Caution.NeverStepOver];

    /// <summary>True when the shaft or auger of such a machine turns in the open.</summary>
    public static bool TurnsInTheOpen(MachineKind machine) =>
        machine is MachineKind.PostHoleAuger or MachineKind.AugerWagon or MachineKind.SnowBlower or MachineKind.FeedMixer;

    /// <summary>What stands first for a machine; nothing for most.</summary>
    public static IReadOnlyList<Caution> First(MachineKind machine) => TurnsInTheOpen(machine) ? Entanglement : [];

    /// <summary>The cautions of a machine whose devices are not known.</summary>
    public static IReadOnlyList<Caution> Of(MachineKind machine) => [.. First(machine), .. Always];

    /// <summary>The cautions of a machine and the devices in its driveline, most urgent first.</summary>
    public static IReadOnlyList<Caution> Of(MachineKind machine, DrivelineChain chain)
    {
        return Of(machine, chain, ProtectionPolicy.Default);
    }

    /// <summary>The same, with those of the caller after them.</summary>
    public static IReadOnlyList<Caution> Of(MachineKind machine, DrivelineChain chain, ProtectionPolicy policy)
    {
        bool hasBolt = false;
        bool hasClutch = false;
        IReadOnlyList<ProtectiveDevice> devices = chain.Devices;
        for (int k = 0; k < devices.Count; k++)
        {
            hasBolt |= devices[k].Kind == DeviceKind.ShearBolt;
            hasClutch |= devices[k].Kind == DeviceKind.SlipClutch;
        }

        var cautions = new List<Caution>(Always.Length + Clutch.Length + Entanglement.Length);
        Add(cautions, First(machine));
        Add(cautions, BeforeDevices);
        Add(cautions, hasBolt ? Bolt : []);
        Add(cautions, hasClutch ? Clutch : []);
        Add(cautions, Always);
        Add(cautions, policy.Cautions);
        return cautions.AsReadOnly();
    }

    private static void Add(List<Caution> cautions, IReadOnlyList<Caution> more)
    {
        for (int k = 0; k < more.Count; k++)
        {
            if (!cautions.Contains(more[k]))
            {
                cautions.Add(more[k]);
            }
        }
    }
}
