using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Protection;

/// <summary>An engagement or a strike with and without the protection, against what damages each part.</summary>
/// <remarks>
/// Damaged: Yes when the expected torque is above the expected damage torque; No when the torque of a severe event, with the
/// device at any value of its band, stays below the lowest damage torque; else Maybe. A run that rests on anything but stated
/// facts, and a limit nobody stated, give neither Yes nor No. A blow against what does not give has no known limit: a rotor that
/// springs back from it at the share e of its speed twists a line of stiffness k behind the inertia J up to T₀ + (1 + e) ω √(J k),
/// and the run knows no e; what stays below its limit there is not known, never No. With a device of which nobody knows when it acts, there
/// is no run
/// with protection.
/// Severe: highest clutch capacity and steady torque, or quickest engagement, at every stated stiffness. Immutable.
/// </remarks>
public sealed partial class SimulationCheck
{
    private static readonly Basis Blow = Basis.FromMemory("turning masses on springs; nobody has measured such a blow");
    private static readonly BandPoint[] DevicePoints = [BandPoint.Low, BandPoint.Expected, BandPoint.High];

    private readonly SimulationRuns runs;
    private MachineKind machine;
    private IReadOnlyList<Caution>? cautions;

    private SimulationCheck(SimulationRuns runs)
    {
        this.runs = runs;
        Loads = AllLoads().AsReadOnly();
        Findings = AllFindings().AsReadOnly();
        Work = runs.Work;
    }

    /// <summary>What was simulated.</summary>
    public DrivelineSimulation Simulation => runs.Simulation;

    /// <summary>
    /// The run with the devices as fitted, at their expected torques; null when facts are missing or the blow does not pass the driveline.
    /// </summary>
    public SimulationOutcome? With => runs.With;

    /// <summary>The run in which no device can act; null when facts are missing or the blow does not pass the driveline.</summary>
    public SimulationOutcome? Without => runs.Without;

    /// <summary>Every part and device, in order from the tractor.</summary>
    public IReadOnlyList<SimulatedLoad> Loads { get; }

    /// <summary>True when a device as fitted acts; null when not known, as after a blow on the pan, which may wedge or not.</summary>
    public bool? Tripped => runs.Tripped;

    /// <summary>
    /// The device that comes nearest to acting when none can act; null without a device, without a run, or when some device in good order
    /// is not known.
    /// </summary>
    public ProtectiveDevice? NearestDevice => Without is { IsComplete: true } && Chain.Devices.Count > 0
        && Chain.Devices.All(d => d.InGoodOrder is not null) ? NearestToTrip() : null;

    /// <summary>True when the strike met something that does not give: its torques are at least those of the run.</summary>
    public bool IsBlowUnbounded => IsUnbounded(With) || IsUnbounded(Without);

    /// <summary>What a strike put on <see cref="NearestDevice"/>, at its place, while none acted.</summary>
    /// <remarks>
    /// Null when the run does not rest on stated facts alone, or nothing bounds the blow and even a mean device need not act at what is
    /// known of it.
    /// </remarks>
    public TorqueBand? BlowAtDevice => Simulation is { Strike: not null, RestsOnFacts: true } && NearestDevice is { } device
        && SimulationRuns.Whole(Without, Chain.IndexOf(device)) is { } peak && Without!.IsComplete
        && !(IsBlowUnbounded && peak < device.InGoodOrder!.SiBand.Expected)
        ? TorqueBand.Exactly(Torque.FromNewtonMeters(peak), Blow)
        : null;

    /// <summary>Everything a caller must notice, worst first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The cautions that go with this result.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= VerdictCautions.Of(machine, Chain);

    private DrivelineChain Chain => Simulation.Chain;

    /// <summary>Work of all runs together; see <see cref="SimulationLimits"/>.</summary>
    public long Work { get; }

    /// <summary>Runs a simulation and checks it, within the usual limits.</summary>
    public static SimulationCheck Of(DrivelineSimulation simulation) => Of(simulation, SimulationLimits.Usual);

    /// <summary>Runs a simulation within limits and checks it. What they cut off decides nothing.</summary>
    public static SimulationCheck Of(DrivelineSimulation simulation, SimulationLimits limits) =>
        Of(simulation, limits, CancellationToken.None);

    /// <summary>The same, until it is stopped: asked after every step.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SimulationCheck Of(DrivelineSimulation simulation, SimulationLimits limits, CancellationToken stop) =>
        Of(simulation, new WorkMeter(limits, 0, stop));

    internal static SimulationCheck Of(DrivelineSimulation simulation, WorkMeter meter) =>
        Of(new SimulationRuns(Guard.NotNull(simulation, nameof(simulation)), meter));

    /// <summary>Goes on from the two runs of a simulation.</summary>
    internal static SimulationCheck Of(SimulationRuns runs) => new(runs);

    /// <summary>The cautions of a machine of which nothing could be simulated.</summary>
    /// <param name="machine">The kind of machine.</param>
    public static IReadOnlyList<Caution> CautionsFor(MachineKind machine) => VerdictCautions.Of(machine);

    /// <summary>The same check with the kind of machine, whose cautions it then carries.</summary>
    /// <param name="machine">The kind of machine.</param>
    public SimulationCheck WithMachine(MachineKind machine)
    {
        var copy = (SimulationCheck)MemberwiseClone();
        copy.machine = machine;
        copy.cautions = null;
        return copy;
    }

    /// <summary>What happened with the device.</summary>
    public override string ToString() => With?.ToString() ?? "not simulated";

    private List<SimulatedLoad> AllLoads()
    {
        var loads = new List<SimulatedLoad>();
        SimulationOutcome?[] severeWith = [.. DevicePoints.SelectMany(p => Severe(SimulatedDevices.Fitted, p))];
        SimulationOutcome?[] severeWithout = [.. Severe(SimulatedDevices.Blocked, BandPoint.Expected)];
        for (int k = 0; k < Chain.Nodes.Length; k++)
        {
            if (Chain.Nodes[k].Element is not (Part or ProtectiveDevice))
            {
                continue;
            }

            Element element = Chain.Nodes[k].Element!;
            Answer with = Damaged(element, k, With, severeWith);
            Answer without = Damaged(element, k, Without, severeWithout);
            loads.Add(new SimulatedLoad(element, runs.PeakNm(With, k), runs.PeakNm(Without, k), with, without));
        }

        return loads;
    }

    // A stiffer line does not always carry more: a swing may meet the end of a ramp well or badly.
    private IEnumerable<SimulationOutcome?> Severe(SimulatedDevices devices, BandPoint device)
    {
        if (With is null && Without is null)
        {
            yield break;
        }

        bool isBand = Chain.Parts.Any(p => p.Stiffness is { } k && k.SiBand.Low < k.SiBand.High);
        foreach (BandPoint stiffness in isBand ? DevicePoints : [BandPoint.Expected])
        {
            yield return Simulation.RunAt(
                SimulationEnds.Of(devices, device, BandPoint.High, Simulation.Strike is not null).WithStiffness(stiffness), [], runs.Meter);
        }
    }

    private static bool IsUnbounded(SimulationOutcome? run) => run is not null
        && run.Findings.Any(f => f.Code == TorsionFindings.RigidBlow);

    private Answer Damaged(Element element, int node, SimulationOutcome? expected, SimulationOutcome?[] severe)
    {
        if (Simulation.Strike is { MissesDriveline: true })
        {
            return Answer.No;
        }

        if (element is not Part { Limit: { } limit } || expected is null)
        {
            return Answer.NotKnown;
        }

        Band damaged = limit.DamagedAt.SiBand;
        bool decides = Simulation.RestsOnFacts && !limit.IsAssumed && expected.IsComplete;
        bool isAbove = expected.PeakNm(node) > damaged.Expected;
        bool isBelow = expected.IsPeakWhole(node) && severe.All(run => run is { IsComplete: true } && run.PeakNm(node) < damaged.Low)
            && expected.PeakNm(node) < damaged.Low;
        bool isBounded = !IsUnbounded(expected) && !severe.Any(IsUnbounded);
        return !decides ? Answer.Maybe : isAbove ? Answer.Yes : !isBelow ? Answer.Maybe : isBounded ? Answer.No : Answer.NotKnown;
    }
}
