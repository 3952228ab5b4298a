using System.Diagnostics.CodeAnalysis;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>A driveline in time: letting the PTO clutch in, or a strike, as masses on springs. Immutable and safe to share.</summary>
/// <remarks>
/// Everything is referred to the PTO without loss (J · i², k · i², T · i). Parts without a stated stiffness are rigid, which errs
/// high. A fact without which nothing can be run stands in <see cref="Missing"/>; what was taken in place of one, in
/// <see cref="Assumed"/>: such a run is shown, but never decides a verdict. Closed forms it meets: a rotor stopped dead,
/// T₀ + ω √(J k) with the inertia on the driving side; a sudden bite on a free line, 2 T_c J₂ / (J₁ + J₂); heat of an
/// engagement, J₁ J₂ ω² / (2 (J₁ + J₂)).
/// </remarks>
public sealed partial class DrivelineSimulation
{
    private static readonly BandPoint[] AllPoints = [BandPoint.Low, BandPoint.Expected, BandPoint.High];

    private static readonly BandPoint[] BothEnds = [BandPoint.Low, BandPoint.High];

    // An engine that nothing slows, and a clutch that bites at once, put more on the line than the real ones.
    private static readonly string[] TooHigh = [SimulationFindings.EngineHeld, SimulationFindings.SuddenBite];

    private static readonly Basis Undamped = Basis.CommonPractice(
        "masses on springs, gears without loss, simulated at the ends of what is stated");

    // The line in which no device acts, everything as expected: what is missing was found by laying it.
    private SimulatedLine? expected;
    private IReadOnlyList<Finding>? assumed;

    private DrivelineSimulation(DrivelineChain chain, SimulationDrive drive, SimulatedStrike? strike)
    {
        Chain = Guard.NotNull(chain, nameof(chain));
        Drive = Guard.NotNull(drive, nameof(drive));
        Strike = strike;
        Missing = AllMissing() is { Count: > 0 } missing ? missing.AsReadOnly() : [];
    }

    /// <summary>The driveline.</summary>
    public DrivelineChain Chain { get; }

    /// <summary>What drives it.</summary>
    public SimulationDrive Drive { get; }

    /// <summary>The strike; null for an engagement.</summary>
    public SimulatedStrike? Strike { get; }

    /// <summary>What is simulated.</summary>
    public SimulatedEvent Event => Strike is null ? SimulatedEvent.Engagement : SimulatedEvent.Strike;

    /// <summary>Facts without which nothing can be run; empty when it can.</summary>
    public IReadOnlyList<Finding> Missing { get; }

    /// <summary>What was taken in place of facts; with any, a run decides nothing.</summary>
    public IReadOnlyList<Finding> Assumed => assumed ??= AllAssumed().AsReadOnly();

    /// <summary>True when it can be run.</summary>
    public bool CanRun => Missing.Count == 0;

    /// <summary>True when it can be run on stated facts alone.</summary>
    public bool RestsOnFacts => CanRun && Assumed.Count == 0;

    /// <summary>Engaging the PTO clutch, from standstill.</summary>
    public static DrivelineSimulation OfEngagement(DrivelineChain chain, SimulationDrive drive) => new(chain, drive, null);

    /// <summary>A strike at work.</summary>
    /// <exception cref="ArgumentException">What is struck is not an element of the chain.</exception>
    public static DrivelineSimulation OfStrike(DrivelineChain chain, SimulationDrive drive, SimulatedStrike strike)
    {
        Guard.NotNull(chain, nameof(chain)).IndexOf(Guard.NotNull(strike, nameof(strike)).At);
        return new DrivelineSimulation(chain, drive, strike);
    }

    /// <summary>Runs it with every stated band at its expected value and the devices at one value of theirs.</summary>
    /// <exception cref="InvalidOperationException">A fact is missing; the message names the codes.</exception>
    internal SimulationOutcome Run(SimulatedDevices devices, BandPoint device) =>
        TryRun(devices, device, BandPoint.Expected, out SimulationOutcome? outcome, out IReadOnlyList<Finding> missing)
            ? outcome
            : throw new InvalidOperationException(
                "The simulation lacks facts: " + string.Join(", ", missing.Select(f => f.Code).Distinct()) + ".");

    /// <summary>Runs it, with the bands of drive and line at the values of a mild or severe event, when no fact is missing.</summary>
    /// <param name="devices">What the devices can do.</param>
    /// <param name="device">The value of their bands at which they act.</param>
    /// <param name="severity">
    /// Low, expected or high: a high one has the highest clutch capacity and stiffness; a strike then finds the highest load, an engagement
    /// the lowest and the shortest time.
    /// </param>
    /// <param name="outcome">The outcome; null when facts are missing.</param>
    /// <param name="missing">The facts missing; empty when there is an outcome.</param>
    internal bool TryRun(SimulatedDevices devices, BandPoint device, BandPoint severity,
        [NotNullWhen(true)] out SimulationOutcome? outcome, out IReadOnlyList<Finding> missing) =>
        TryRun(devices, device, severity, new WorkMeter(SimulationLimits.Usual), out outcome, out missing);

    internal bool TryRun(
        SimulatedDevices devices, BandPoint device, BandPoint severity, WorkMeter meter,
        [NotNullWhen(true)] out SimulationOutcome? outcome, out IReadOnlyList<Finding> missing)
    {
        outcome = null;
        missing = Missing;
        if (!CanRun || Strike is { MissesDriveline: true })
        {
            return false;
        }

        var found = new List<Finding>();
        outcome = RunAt(SimulationEnds.Of(devices, device, severity, Strike is not null), found, meter);
        missing = found;
        return outcome is not null;
    }

    /// <summary>
    /// Highest torque of the engagement, no device acting, as the PTO torque at which a device would carry it; null when it is no
    /// engagement or rests on assumptions.
    /// </summary>
    /// <remarks>
    /// Runs at every end of clutch capacity, time of engagement and load, and at three values of the stiffness; the highest and lowest of
    /// them are the ends of the
    /// band, so that what lies beyond is unlikely, not impossible. Without a device the torque behind the PTO clutch counts.
    /// </remarks>
    internal TorqueBand? EngagementPeak() => EngagementPeak(SimulationLimits.Usual).AtPto;

    /// <summary>The same within limits, with what it cost.</summary>
    /// <param name="limits">For all its runs together.</param>
    internal SimulatedPeak EngagementPeak(SimulationLimits limits)
    {
        var meter = new WorkMeter(limits);
        return new SimulatedPeak(EngagementPeak(meter), meter);
    }

    internal TorqueBand? EngagementPeak(WorkMeter meter) => Strike is null && RestsOnFacts ? PeakBand(meter) : null;

    /// <summary>
    /// What the engagement peak stays below when all that was taken in place of facts makes it too high; null else, and when it rests on
    /// facts alone.
    /// </summary>
    internal TorqueBand? EngagementPeakAtMost(WorkMeter meter) =>
        Strike is null && CanRun && Assumed.Count > 0 && Assumed.All(f => TooHigh.Contains(f.Code)) && Drive.Engagement.Capacity is not null
            ? PeakBand(meter) : null;

    internal SimulationOutcome? RunAt(in SimulationEnds ends, List<Finding> missing, WorkMeter meter) =>
        meter.TrySpend(LayingWork()) && LineAt(in ends, missing) is { } line ? new SimulationOutcome(Chain, line, Event, meter) : null;

    private SimulatedLine? LineAt(in SimulationEnds ends, List<Finding> missing) =>
        expected is not null && ends.AreExpected ? expected : LineMapping.Of(Chain, Drive, Strike, in ends, missing);

    private TorqueBand? PeakBand(WorkMeter meter)
    {
        var peaks = new List<double>();
        foreach (SimulationEnds ends in EngagementEnds())
        {
            if (RunAt(in ends, [], meter) is not { IsComplete: true } outcome)
            {
                return null;
            }

            peaks.Add(PeakAtPto(outcome));
        }

        double expected = peaks[0];
        BandBasis basis = Drive.Engagement.Capacity!.Basis.With(Undamped);
        foreach (Part part in Chain.Parts)
        {
            basis = part.Stiffness is { } stiffness ? BandBasis.Combine(basis, stiffness.Basis) : basis;
        }

        var ends95 = new BandBasis(basis.Low, basis.Expected, basis.High, BandEnd.Interval95, BandEnd.Interval95);
        return TorqueBand.OfSi(new Band(peaks.Min(), expected, peaks.Max()), ends95);
    }

    // Of the line, its slowest swing, and reading the peaks.
    private long LayingWork()
    {
        long parts = Chain.Nodes.Length + 2;
        return (4000 * parts) + (20 * parts * parts);
    }

    // The expected values come first, then every corner.
    private IEnumerable<SimulationEnds> EngagementEnds()
    {
        yield return SimulationEnds.Of(SimulatedDevices.Blocked, BandPoint.Expected, BandPoint.Expected, isStrike: false);
        BandPoint[] stiffness = Chain.Parts.Any(p => p.Stiffness is { } k && k.SiBand.Low < k.SiBand.High) ? AllPoints
            : [BandPoint.Expected];
        BandPoint[] rise = Drive.Rise is { } t && t.SiBand.Low < t.SiBand.High ? BothEnds : [BandPoint.Expected];
        BandPoint[] capacity = Drive.Engagement.Capacity is { } c && c.SiBand.Low < c.SiBand.High ? BothEnds : [BandPoint.Expected];
        BandPoint[] load = Drive.Load is { } l && l.SiBand.Low < l.SiBand.High ? BothEnds : [BandPoint.Expected];
        foreach (BandPoint c1 in capacity)
        {
            foreach (BandPoint k1 in stiffness)
            {
                foreach (BandPoint t1 in rise)
                {
                    foreach (BandPoint l1 in load)
                    {
                        yield return new SimulationEnds(SimulatedDevices.Blocked, BandPoint.Expected, c1, k1, t1, l1);
                    }
                }
            }
        }
    }

    private double PeakAtPto(SimulationOutcome outcome)
    {
        double highest = 0;
        bool hasDevice = Chain.Devices.Count > 0;
        for (int k = 0; k < Chain.Nodes.Length; k++)
        {
            ChainNode node = Chain.Nodes[k];
            bool counts = hasDevice ? node.Device is not null : true;
            highest = counts ? Math.Max(highest, node.ToPto(Band.Exactly(outcome.PeakNm(k))).Expected) : highest;
        }

        return highest;
    }
}
