using Driveline.Chains;
using Driveline.Torsion;

namespace Driveline.Loads;

/// <summary>
/// A driveline as a torsional model at PTO speed, with the start and length of its run, and which link each element rides on.
/// </summary>
/// <remarks>
/// The length of a run covers the event, the slip of the PTO clutch as far as it ends, and some swings of the slowest mode. A strike
/// starts in the steady state: every link before the load carries T₀.
/// </remarks>
internal sealed partial class SimulatedLine
{
    public const string Engine = "engine";
    public const string PtoClutch = "PTO clutch";
    public const string Struck = "What was struck";
    public const double LongestRunS = 20;

    private const string Drive = "engine torque";
    private const string Load = "load";
    private const double Swings = 4;
    private const double LeastRunS = 0.05;
    private const double LongestSlipS = 6;

    private readonly DrivelineChain chain;
    private readonly List<Lump> lumps;
    private readonly List<LineLink> links;
    private readonly string[] lumpNames;
    private readonly string[] linkNames;
    private readonly SimulatedStrike? strike;
    private readonly SimulationDrive drive;
    private readonly SimulationEnds ends;
    private readonly double loadNm;
    private double durationS = double.NaN;

    public SimulatedLine(DrivelineChain chain, SimulationDrive drive, SimulatedStrike? strike, in SimulationEnds ends, List<Lump> lumps,
        List<LineLink> links)
    {
        this.chain = chain;
        this.strike = strike;
        this.drive = drive;
        this.ends = ends;
        this.lumps = lumps;
        this.links = links;
        lumpNames = new string[lumps.Count];
        linkNames = new string[links.Count];
        Name();
        loadNm = drive.LoadNm(ends.Load);
        bool isStrike = strike is not null;
        RadPerS = isStrike ? SteadySpeed(drive) : drive.SpeedRadPerS;
        Model = Build(drive, RadPerS, isStrike);
        Begin = isStrike ? Steady(RadPerS) : Standing(RadPerS);
    }

    /// <summary>Speed of the engine at the PTO when the run begins.</summary>
    public double RadPerS { get; }

    public TorsionModel Model { get; }

    public TorsionStart Begin { get; }

    public double DurationS
    {
        get
        {
            double known = Volatile.Read(ref durationS);
            if (double.IsNaN(known))
            {
                known = strike is null ? EngagementS() : StrikeS(strike.StartS);
                Volatile.Write(ref durationS, known);
            }

            return known;
        }
    }

    /// <summary>Links whose torque an element may see, the second null when there is one; none behind everything that turns.</summary>
    public (string? One, string? Other) LinksOf(int node)
    {
        for (int l = 0; l < links.Count; l++)
        {
            if (links[l].Nodes.Contains(node))
            {
                return (linkNames[l], null);
            }
        }

        for (int k = 0; k < lumps.Count; k++)
        {
            bool isAtInput = lumps[k].IsAtInput(node);
            if (isAtInput || lumps[k].IsBetween(node))
            {
                // Between two inertias of one lump the torque lies between those before and behind the lump.
                string? before = k > 0 ? linkNames[k - 1] : null;
                string? behind = k < links.Count && (!isAtInput || before is null) ? linkNames[k] : null;
                return before is null ? (behind, null) : (before, behind);
            }
        }

        return (null, null);
    }

    /// <summary>
    /// True for an element within what is stopped as one, with inertia before it: no one knows how the blow is shared there.
    /// </summary>
    public bool IsWithinStop(int node)
    {
        int struck = strike is null ? -1 : chain.IndexOf(strike.At);
        for (int k = 0; k < lumps.Count && node <= struck; k++)
        {
            if (lumps[k].IsStruck && lumps[k].IsBetween(node))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A device that the blow reaches with nothing that twists between them; null when there is none.</summary>
    public string? DeviceAtStop
    {
        get
        {
            int l = links.FindIndex(link => link.Compliance == 0 && link.Coupling is not null && link.Name != PtoClutch
                && (lumps[links.IndexOf(link)].IsStruck || lumps[links.IndexOf(link) + 1].IsStruck));
            return l < 0 ? null : links[l].Name;
        }
    }

    /// <summary>How many links there are.</summary>
    public int LinkCount => links.Count;

    /// <summary>The link of that number when it has a clutch that slips and heats; null else. The PTO clutch is the first.</summary>
    public string? SlippingLink(int link) => links[link].Coupling is FrictionCoupling ? linkNames[link] : null;

    /// <summary>The link of a device's coupling; null when it is rigid in this run.</summary>
    public string? CouplingOf(int node)
    {
        for (int l = 0; l < links.Count; l++)
        {
            if (links[l].Coupling is not null && links[l].Nodes.Contains(node) && links[l].Name == chain.Nodes[node].Element!.Name)
            {
                return linkNames[l];
            }
        }

        return null;
    }

    /// <summary>The link of the PTO clutch; null when nothing slips there.</summary>
    public string? PtoClutchLink => links.Count > 0 && links[0].Name == PtoClutch && links[0].Coupling is not null ? linkNames[0] : null;

    /// <summary>What a link carries before a strike, N·m at the PTO: the load of work, and nothing behind what takes it.</summary>
    public double SteadyNm(string link) => Array.IndexOf(linkNames, link) < Loaded ? loadNm : 0;

    private int Loaded => lumps.FindIndex(static lump => lump.TakesLoad);

    private double SwingS()
    {
        double slowest = SlowestSwing.RadPerS(lumps, links);
        return double.IsPositiveInfinity(slowest) ? 0 : Swings * 2 * Math.PI / slowest;
    }

    private double StrikeS(double startS) => Math.Min(LongestRunS, startS + Math.Max(LeastRunS, SwingS()));

    // t = J ω / (T_c − T_l) after the rise; a clutch that never gets there is watched for a while.
    private double EngagementS()
    {
        double capacity = drive.Engagement.Capacity!.SiBand.At(ends.Capacity);
        double inertia = 0;
        for (int k = 1; k < lumps.Count; k++)
        {
            inertia += lumps[k].InertiaKgM2;
        }

        double slip = capacity > loadNm ? inertia * drive.SpeedRadPerS / (capacity - loadNm) : LongestSlipS;
        return Math.Min(LongestRunS, drive.RiseS(ends.Rise) + Math.Max(LeastRunS, Math.Min(LongestSlipS, 1.2 * slip) + SwingS()));
    }
}
