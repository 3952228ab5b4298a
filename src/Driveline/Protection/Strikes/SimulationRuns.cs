using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>The two runs of a simulation that its torques come from, without and with the protection; a check goes on from them.</summary>
internal sealed class SimulationRuns
{
    private readonly long before;

    public SimulationRuns(DrivelineSimulation simulation, WorkMeter meter)
    {
        Meter = meter;
        before = meter.Done;
        Simulation = simulation;
        _ = simulation.TryRun(
            SimulatedDevices.Blocked, BandPoint.Expected, BandPoint.Expected, meter, out SimulationOutcome? without, out _);
        Without = without;
        if (without is not null && Unsure(simulation.Chain) is { } unsure)
        {
            MissingWith = [Finding.Of(SimulationFindings.DeviceNotKnown, Severity.Warning).With("name", unsure.Name)];
            return;
        }

        _ = simulation.TryRun(SimulatedDevices.Fitted, BandPoint.Expected, BandPoint.Expected, meter, out SimulationOutcome? with,
            out IReadOnlyList<Finding> missing);
        With = with;
        MissingWith = with is null ? missing : [];
    }

    public DrivelineSimulation Simulation { get; }

    public WorkMeter Meter { get; }

    /// <summary>The run in which no device can act; null when facts are missing or the blow does not pass the driveline.</summary>
    public SimulationOutcome? Without { get; }

    /// <summary>The run with the devices as fitted, at their expected torques; null when it cannot be run.</summary>
    public SimulationOutcome? With { get; }

    /// <summary>What the run with the devices lacks.</summary>
    public IReadOnlyList<Finding> MissingWith { get; }

    /// <summary>Work since the first of them began.</summary>
    public long Work => Meter.Done - before;

    /// <summary>True when a device as fitted acts; null when not known, as after a blow on the pan, which may wedge or not.</summary>
    public bool? Tripped => Simulation.Strike is { MissesDriveline: true } ? false
        : Simulation.Strike is { Place: StrikePlace.Pan } ? null
        : With is { Tripped: true } or { IsComplete: true } ? With.Tripped
        : null;

    /// <summary>Largest torque of an element in a run that was not cut off, at its own input, N·m; null when not known.</summary>
    public double? PeakNm(SimulationOutcome? run, int node) => Whole(run, node) ?? SteadyNm(node);

    /// <summary>The same of the run alone.</summary>
    public static double? Whole(SimulationOutcome? run, int node) => run is { IsComplete: true } && run.IsPeakWhole(node)
        ? run.PeakNm(node) : null;

    /// <summary>One more run; null, with what is missing, when it cannot be run.</summary>
    public SimulationOutcome? Run(SimulatedDevices devices, BandPoint device, BandPoint severity, List<Finding> missing)
    {
        if (Simulation.TryRun(devices, device, severity, Meter, out SimulationOutcome? outcome, out IReadOnlyList<Finding> lacks))
        {
            return outcome;
        }

        missing.AddRange(lacks);
        return null;
    }

    private static ProtectiveDevice? Unsure(DrivelineChain chain)
    {
        for (int k = 0; k < chain.Devices.Count; k++)
        {
            if (SimulatedDevice.IsUnsure(chain.Devices[k]))
            {
                return chain.Devices[k];
            }
        }

        return null;
    }

    // A blow that does not pass leaves the line at the torque it carried.
    private double? SteadyNm(int node)
    {
        double ratio = Simulation.Chain.Nodes[node].Ratio;
        return Simulation is { Strike.MissesDriveline: true, Drive.Load: { HasExpected: true } load } && !double.IsNaN(ratio)
            ? load.SiBand.Expected / ratio
            : null;
    }
}
