using Driveline.Chains;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>
/// What an engagement or a strike may put on a driveline when usual values stand in place of the facts that nobody stated. It decides
/// nothing: no answer, and no bound of any torque, rests on it. Immutable.
/// </summary>
/// <remarks>
/// One run with every usual value as expected, and one at each corner: all stiffnesses low or high, all inertias low or high, the speed
/// ratio low or high, and a mild or severe drive (weak clutch and slow driver, or strong and quick; before a strike little or much
/// work). What is stated stays at its expected value, and the devices act at theirs. The truth may lie beyond.
/// </remarks>
public sealed class SimulationSpan
{
    private static readonly Basis Corners = Basis.FromMemory("runs at the corners of usual values in place of facts");

    private SimulationSpan(SupposedLine line, DrivelineSimulation expected, IReadOnlyList<SpannedLoad> loads, int runs, int? acts)
    {
        Supposed = line.Facts;
        Simulation = expected;
        Loads = loads;
        Runs = runs;
        RunsThatTrip = acts;
        Findings = [.. Supposed.Select(f => f.Finding), .. expected.Assumed];
    }

    /// <summary>Every usual value that stands in place of a fact.</summary>
    public IReadOnlyList<SupposedFact> Supposed { get; }

    /// <summary>What was simulated, every usual value as expected.</summary>
    public DrivelineSimulation Simulation { get; }

    /// <summary>Every part and device, in order from the tractor.</summary>
    public IReadOnlyList<SpannedLoad> Loads { get; }

    /// <summary>How many runs there are, each with and without the devices.</summary>
    public int Runs { get; }

    /// <summary>In how many of them a device as fitted acts; null when nobody knows when a device acts, or there is none.</summary>
    public int? RunsThatTrip { get; }

    /// <summary>What was supposed, and what else was taken in place of facts.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>
    /// The span of a simulation that lacks facts, within limits; null when it lacks none, when what it lacks has no usual value, or when
    /// the limits do not suffice.
    /// </summary>
    internal static SimulationSpan? Of(DrivelineSimulation stated, UsualMachine machine, SimulationLimits limits) =>
        Of(stated, machine, new WorkMeter(limits));

    internal static SimulationSpan? Of(DrivelineSimulation stated, UsualMachine machine, WorkMeter meter)
    {
        Guard.NotNull(machine, nameof(machine));
        if (Guard.NotNull(stated, nameof(stated)).CanRun || SupposedLine.Of(stated, machine) is not { } line)
        {
            return null;
        }

        DrivelineSimulation expected = line.At(_ => BandPoint.Expected);
        if (!expected.CanRun)
        {
            return null;
        }

        IReadOnlyList<ProtectiveDevice> devices = expected.Chain.Devices;
        bool isSure = devices.Count > 0 && !devices.Any(SimulatedDevice.IsUnsure) && LineMapping.Of(
            expected.Chain, expected.Drive, expected.Strike, Ends(SimulatedDevices.Fitted, expected), []) is not null;
        var with = new List<SimulationOutcome>();
        var without = new List<SimulationOutcome>();
        foreach (DrivelineSimulation run in Corner(line).Prepend(expected))
        {
            if (!TryRun(run, SimulatedDevices.Blocked, without, meter) || (isSure && !TryRun(run, SimulatedDevices.Fitted, with, meter)))
            {
                return null;
            }
        }

        List<SpannedLoad> loads = [];
        for (int k = 0; k < expected.Chain.Nodes.Length; k++)
        {
            if (expected.Chain.Nodes[k].Element is { } element and (Part or ProtectiveDevice))
            {
                loads.Add(new SpannedLoad(element, Span(with, k), Span(without, k)));
            }
        }

        return new SimulationSpan(line, expected, loads.AsReadOnly(), without.Count, isSure ? with.Count(o => o.Tripped) : null);
    }

    private static IEnumerable<DrivelineSimulation> Corner(SupposedLine line)
    {
        int[] factors = [.. line.Facts.Select(f => f.Factor).Distinct()];
        for (int corner = 0; corner < 1 << factors.Length; corner++)
        {
            int bits = corner;
            yield return line.At(factor => (bits >> Array.IndexOf(factors, factor) & 1) == 0 ? BandPoint.Low : BandPoint.High);
        }
    }

    private static SimulationEnds Ends(SimulatedDevices devices, DrivelineSimulation run) =>
        SimulationEnds.Of(devices, BandPoint.Expected, BandPoint.Expected, run.Strike is not null);

    private static bool TryRun(DrivelineSimulation run, SimulatedDevices devices, List<SimulationOutcome> outcomes, WorkMeter meter)
    {
        SimulationEnds ends = Ends(devices, run);
        if (run.RunAt(in ends, [], meter) is not { IsComplete: true } outcome)
        {
            return false;
        }

        outcomes.Add(outcome);
        return true;
    }

    // The first run is the expected one.
    private static TorqueBand? Span(List<SimulationOutcome> outcomes, int node) =>
        outcomes.Count == 0 || !outcomes.TrueForAll(o => o.IsPeakWhole(node)) ? null
            : TorqueBand.OfSi(
                new Band(outcomes.Min(o => o.PeakNm(node)), outcomes[0].PeakNm(node), outcomes.Max(o => o.PeakNm(node))),
                BandBasis.Of(Corners));
}
