using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Reports.Simulations;

/// <summary>Torque over time of the elements worth looking at, with and without protection, at equal times.</summary>
internal sealed class SimulationTraces
{
    private const int MostShown = 4;

    private SimulationTraces(double lengthS, IReadOnlyList<SimulationTrace> all)
    {
        LengthS = lengthS;
        All = all;
    }

    public double LengthS { get; }

    public IReadOnlyList<SimulationTrace> All { get; }

    /// <summary>Traces of every element of which one is known.</summary>
    public static SimulationTraces Of(SimulationCheck check, int samples)
    {
        double length = Math.Max(check.With?.Length.Seconds ?? 0, check.Without?.Length.Seconds ?? 0);
        return new SimulationTraces(length, length > 0 ? [.. check.Loads.Select(load => Trace(check, load, length, samples))] : []);
    }

    /// <summary>The devices, and the parts nearest to their damage or beyond it, in order from the tractor.</summary>
    public IReadOnlyList<SimulationTrace> Shown
    {
        get
        {
            SimulationTrace[] devices = [.. All.Where(t => t.Load.Element is ProtectiveDevice).Take(2)];
            IEnumerable<SimulationTrace> parts = All
                .Where(t => t.Load.DamagedAt is not null)
                .OrderByDescending(t => t.Most / Math.Max(1e-9, t.Load.DamagedAt!.Low.NewtonMeters))
                .Take(MostShown - devices.Length);
            var chosen = new HashSet<SimulationTrace>(devices.Concat(parts));
            return chosen.Count > 0 ? [.. All.Where(chosen.Contains)] : [.. All.OrderByDescending(t => t.Most).Take(1)];
        }
    }

    private static SimulationTrace Trace(SimulationCheck check, SimulatedLoad load, double length, int samples) => new(
        load, Sampled(check.With, load.Element, length, samples), Sampled(check.Without, load.Element, length, samples));

    private static IReadOnlyList<double>? Sampled(SimulationOutcome? run, Element element, double length, int samples)
    {
        if (run is null || !run.IsPeakWhole(element))
        {
            return null;
        }

        int own = Math.Max(2, (int)Math.Round((samples - 1) * run.Length.Seconds / length) + 1);
        return run.Trace(element, Math.Min(own, samples));
    }
}
