using System.Diagnostics.CodeAnalysis;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>What one run of a simulation found. Immutable; it keeps its line, so that traces can be drawn.</summary>
public sealed partial class SimulationOutcome
{
    private readonly DrivelineChain chain;
    private readonly SimulatedLine line;
    private readonly double[] peakNm;
    private readonly double[] peakAtS;
    private readonly string?[] peakLink;
    private readonly double[] tripAtS;

    internal SimulationOutcome(DrivelineChain chain, SimulatedLine line, SimulatedEvent happened, WorkMeter meter)
    {
        this.chain = chain;
        this.line = line;
        Event = happened;
        TransientResult result = meter.Run(line.Begin, line.DurationS);
        peakNm = new double[chain.Nodes.Length];
        peakAtS = new double[peakNm.Length];
        peakLink = new string?[peakNm.Length];
        for (int k = 0; k < peakNm.Length; k++)
        {
            ReadPeak(result, k);
        }

        double trip = double.PositiveInfinity;
        tripAtS = new double[peakNm.Length];
        for (int k = 0; k < peakNm.Length; k++)
        {
            string? coupling = chain.Nodes[k].Device is null ? null : line.CouplingOf(k);
            tripAtS[k] = coupling is not null && result.TripTime(coupling) is { } at ? at.Seconds : double.PositiveInfinity;
            if (tripAtS[k] < trip)
            {
                trip = tripAtS[k];
                TrippedDevice = chain.Nodes[k].Device;
            }
        }

        TripTime = TrippedDevice is null ? null : Duration.FromSeconds(trip);
        Slips = Array.AsReadOnly(AllSlips(result));
        ThroughTime = CutThrough(result);
        StruckJ = ThroughTime is null ? 0 : result.SlipEnergy(SimulatedLine.Struck).Joules;
        EnergyError = Math.Abs(result.EnergyImbalance);
        IsComplete = result.IsComplete;
        Length = Duration.FromSeconds(line.DurationS);
        Findings = AllFindings(result);
    }

    /// <summary>What was simulated.</summary>
    public SimulatedEvent Event { get; }

    /// <summary>The device that acted first; null when none did.</summary>
    public ProtectiveDevice? TrippedDevice { get; }

    /// <summary>When it acted, since the start of the run; null when none did.</summary>
    public Duration? TripTime { get; }

    /// <summary>True when a device acted.</summary>
    [MemberNotNullWhen(true, nameof(TrippedDevice))]
    [MemberNotNullWhen(true, nameof(TripTime))]
    public bool Tripped => TrippedDevice is not null && TripTime is not null;

    /// <summary>When a device acted, since the start of the run; null when it did not.</summary>
    /// <exception cref="ArgumentException">The device is not in the chain.</exception>
    public Duration? TripTimeOf(ProtectiveDevice device) =>
        tripAtS[chain.IndexOf(Guard.NotNull(device, nameof(device)))] is < double.PositiveInfinity and var at
            ? Duration.FromSeconds(at) : null;

    /// <summary>When what was struck was cut through, since the start of the run; null when it was not.</summary>
    public Duration? ThroughTime { get; }

    /// <summary>What it took until then.</summary>
    internal double StruckJ { get; }

    /// <summary>Speed of the PTO when the strike came.</summary>
    internal double RadPerS => line.RadPerS;

    /// <summary>Heat and angle of every clutch that can slip, the PTO clutch first.</summary>
    public IReadOnlyList<SimulatedSlip> Slips { get; }

    /// <summary>Heat of all slip.</summary>
    public Energy SlipEnergy => Energy.FromJoules(Slips.Sum(s => s.EnergyJ));

    /// <summary>Slip of the clutch that slipped furthest, at the PTO.</summary>
    public Angle SlipAngle => Angle.FromRadians(Slips.Select(s => s.AngleRad).DefaultIfEmpty(0).Max());

    /// <summary>Energy not accounted for, as a share of all energy that took part, 0 to 1.</summary>
    public double EnergyError { get; }

    /// <summary>True when the run reached its end.</summary>
    public bool IsComplete { get; }

    /// <summary>Length of the run.</summary>
    public Duration Length { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Largest torque of an element, whatever its direction, at its own input.</summary>
    /// <exception cref="ArgumentException">The element is not in the chain.</exception>
    public Torque Peak(Element element) => Torque.FromNewtonMeters(PeakNm(chain.IndexOf(Guard.NotNull(element, nameof(element)))));

    /// <summary>When that torque came, since the start of the run.</summary>
    /// <exception cref="ArgumentException">The element is not in the chain.</exception>
    public Duration PeakTime(Element element) => Duration.FromSeconds(peakAtS[chain.IndexOf(Guard.NotNull(element, nameof(element)))]);

    /// <summary>
    /// Torque of an element at its own input, N·m, at equal times from the start of the run to its end; the first of a strike is that
    /// before contact.
    /// </summary>
    /// <param name="element">An element of the chain.</param>
    /// <param name="samples">2 to 100 000.</param>
    /// <exception cref="ArgumentException">The element is not in the chain.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples is out of its range.</exception>
    public IReadOnlyList<double> Trace(Element element, int samples) => Trace(element, samples, Length);

    /// <summary>The same from the start of the run to a time, which may lie beyond the end of the run.</summary>
    /// <param name="element">An element of the chain.</param>
    /// <param name="samples">2 to 100 000.</param>
    /// <param name="until">The last time; above 0, up to 60 s.</param>
    /// <returns>NaN where the usual limits of a simulation end the run.</returns>
    /// <exception cref="ArgumentException">The element is not in the chain.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples or the time is out of its range.</exception>
    public IReadOnlyList<double> Trace(Element element, int samples, Duration until) =>
        Traces([Guard.NotNull(element, nameof(element))], samples, until)[0];

    /// <summary>The same of several elements, from one run.</summary>
    /// <param name="elements">Elements of the chain.</param>
    /// <param name="samples">2 to 100 000.</param>
    /// <param name="until">The last time; above 0, up to 60 s.</param>
    /// <returns>NaN where the usual limits of a simulation end the run.</returns>
    /// <exception cref="ArgumentException">An element is not in the chain.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples or the time is out of its range.</exception>
    public IReadOnlyList<IReadOnlyList<double>> Traces(IReadOnlyList<Element> elements, int samples, Duration until) =>
        Traces(elements, samples, until, SimulationLimits.Usual, CancellationToken.None);

    /// <summary>The same within limits, until it is stopped: asked after every step.</summary>
    /// <param name="elements">Elements of the chain.</param>
    /// <param name="samples">2 to 100 000.</param>
    /// <param name="until">The last time; above 0, up to 60 s.</param>
    /// <param name="limits">Most work of the run.</param>
    /// <param name="stop">Ends the run.</param>
    /// <returns>NaN where the limits end the run.</returns>
    /// <exception cref="ArgumentException">An element is not in the chain.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of samples or the time is out of its range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public IReadOnlyList<IReadOnlyList<double>> Traces(
        IReadOnlyList<Element> elements, int samples, Duration until, SimulationLimits limits, CancellationToken stop)
    {
        double seconds = Guard.Positive(Si.Seconds(until), "Time", "s", nameof(until));
        Guard.Within(seconds, 0, 60, "Time", "s", nameof(until));
        Guard.Within(samples, 2, 100_000, "Number of samples", nameof(samples));
        Guard.NotNull(elements, nameof(elements));
        Guard.NotNull(limits, nameof(limits));
        int[] nodes = [.. elements.Select(chain.IndexOf)];
        string[] links = [.. nodes.Select(k => peakLink[k]).OfType<string>().Distinct()];
        double[] all = new double[links.Length * samples];
        if (links.Length > 0)
        {
            TransientLimits most = TransientLimits.Usual.WithWork(limits.Work).WithStop(stop);
            Transient.TraceTorques(line.Begin, until, most, new TransientWorkspace(), links, all);
        }

        return [.. nodes.Select(k => Trace(all, Array.IndexOf(links, peakLink[k]) * samples, k, samples))];
    }

    // The first value of a strike is that before contact: at contact a damper carries torque at once, elsewhere in each run.
    private double[] Trace(double[] all, int first, int node, int samples)
    {
        double[] trace = new double[samples];
        for (int n = 0; n < samples && peakLink[node] is not null; n++)
        {
            double nm = n == 0 && Event == SimulatedEvent.Strike ? line.SteadyNm(peakLink[node]!) : all[first + n];
            trace[n] = nm / chain.Nodes[node].Ratio;
        }

        return trace;
    }

    /// <summary>
    /// False for an element within what the blow stops as one, with inertia before it: its peak is at least the one given.
    /// </summary>
    /// <exception cref="ArgumentException">The element is not in the chain.</exception>
    public bool IsPeakWhole(Element element) => IsPeakWhole(chain.IndexOf(Guard.NotNull(element, nameof(element))));

    /// <summary>How the event ended, and after how long.</summary>
    public override string ToString() => TripTime is { } trip
        ? FormattableString.Invariant($"{Event}: {TrippedDevice?.Name} gave after {trip.Milliseconds:G4} ms")
        : FormattableString.Invariant($"{Event}: nothing gave in {Length.Milliseconds:G4} ms");

    internal double PeakNm(int node) => peakNm[node];

    internal bool IsPeakWhole(int node) => !line.IsWithinStop(node);
}
