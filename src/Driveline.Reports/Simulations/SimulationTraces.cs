using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using UnitsNet;

namespace Driveline.Reports.Simulations;

/// <summary>Torque over time of the elements worth looking at, with and without protection, at equal times.</summary>
internal sealed class SimulationTraces
{
    private const int MostShown = 4;
    private const double LeastWindowS = 0.002;
    private const double WindowPerPeak = 4;

    private SimulationTraces(double lengthS, IReadOnlyList<SimulationTrace> all)
    {
        LengthS = lengthS;
        All = all;
    }

    public double LengthS { get; }

    public IReadOnlyList<SimulationTrace> All { get; }

    /// <summary>Traces of every element of which one is known, over the whole run.</summary>
    public static SimulationTraces Of(SimulationCheck check, int samples, CancellationToken stop) =>
        Of(check, samples, Whole(check), stop);

    /// <summary>The same over the part in which the peaks come; an engagement in which nothing acts as a whole.</summary>
    public static SimulationTraces OfPeaks(SimulationCheck check, int samples, CancellationToken stop)
    {
        double whole = Whole(check);
        double latest = check.With?.TripTime?.Seconds ?? 0;
        foreach (SimulatedLoad load in check.Loads)
        {
            latest = Math.Max(latest, check.With?.PeakTime(load.Element).Seconds ?? 0);
            latest = Math.Max(latest, check.Without?.PeakTime(load.Element).Seconds ?? 0);
        }

        return Of(check, samples, check.Simulation.Strike is null && check.With is not { Tripped: true } ? whole
            : Math.Min(whole, Math.Max(LeastWindowS, WindowPerPeak * latest)), stop);
    }

    private static double Whole(SimulationCheck check) => Math.Max(check.With?.Length.Seconds ?? 0, check.Without?.Length.Seconds ?? 0);

    private static SimulationTraces Of(SimulationCheck check, int samples, double length, CancellationToken stop)
    {
        if (!(length > 0))
        {
            return new SimulationTraces(length, []);
        }

        Dictionary<Element, IReadOnlyList<double>> with = Sampled(check, check.With, length, samples, stop);
        Dictionary<Element, IReadOnlyList<double>> without = Sampled(check, check.Without, length, samples, stop);
        return new SimulationTraces(length, [.. check.Loads.Select(load => new SimulationTrace(load, Of(with, load), Of(without, load)))]);
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

    private static IReadOnlyList<double>? Of(Dictionary<Element, IReadOnlyList<double>> traces, SimulatedLoad load) =>
        traces.TryGetValue(load.Element, out IReadOnlyList<double>? trace) ? trace : null;

    // A run that was cut off, or would be while it is drawn, is not drawn.
    private static Dictionary<Element, IReadOnlyList<double>> Sampled(
        SimulationCheck check, SimulationOutcome? run, double length, int samples, CancellationToken stop)
    {
        var sampled = new Dictionary<Element, IReadOnlyList<double>>();
        Element[] elements = run is { IsComplete: true } ? [.. check.Loads.Select(l => l.Element).Where(run.IsPeakWhole)] : [];
        IReadOnlyList<IReadOnlyList<double>> traces = elements.Length > 0
            ? run!.Traces(elements, samples, Duration.FromSeconds(length), SimulationLimits.Usual, stop) : [];
        for (int k = 0; k < elements.Length; k++)
        {
            if (!double.IsNaN(traces[k][samples - 1]))
            {
                sampled[elements[k]] = traces[k];
            }
        }

        return sampled;
    }
}
