using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>
/// Watches one driveline over a stream of samples: overloads, trips, slips and their heat, engagements, load cycles, peaks of
/// work.
/// </summary>
/// <remarks>
/// Not thread-safe; one for each driveline. Feeding allocates nothing and never throws on data. The state is bounded: <see
/// cref="Save()"/> at any point and <see cref="Restore"/> give bit for bit the same later output in the same runtime. This is no
/// safety function: it sees what the sensors show, late, and stops nothing.
/// </remarks>
public sealed partial class OverloadMonitor
{
    /// <summary>Events that one sample can bring at most; a span for events must hold so many.</summary>
    public const int MostEventsPerSample = 10;

    private readonly MonitorSettings settings;
    private readonly uint fingerprint;
    private readonly double inPerOut;
    private readonly double slipFromRadPerS;
    private readonly double meetShare;
    private readonly SampleGate gate;
    private readonly EngagementTracker engagement;
    private readonly LevelEpisode overload;
    private readonly SlipTracker slips;
    private readonly TripTracker trips;
    private readonly ClutchThermometer thermometer;
    private readonly RainflowStream cycles;
    private readonly WorkPeakStore peaks;
    private readonly SlipTorqueStore slipTorques;
    private TorqueSample last;
    private double lastSlip = double.NaN;
    private bool overloadAtEngagement;
    private double highestNm = double.NaN;
    private long overloads;

    /// <summary>A monitor that has seen nothing.</summary>
    /// <exception cref="ArgumentNullException">The settings are missing.</exception>
    public OverloadMonitor(MonitorSettings settings)
    {
        this.settings = Guard.NotNull(settings, nameof(settings));
        inPerOut = 1 / settings.SpeedRatio;
        slipFromRadPerS = settings.SlipFromRadPerS;
        meetShare = settings.TripSpeedShare / 2;
        fingerprint = settings.Fingerprint();
        gate = new SampleGate(settings);
        engagement = new EngagementTracker(settings);
        overload = new LevelEpisode(settings.OverloadFromNm, settings.OverloadUntilNm);
        slips = new SlipTracker(settings);
        trips = new TripTracker(settings);
        thermometer = new ClutchThermometer(settings);
        cycles = new RainflowStream(settings);
        peaks = new WorkPeakStore(settings);
        slipTorques = new SlipTorqueStore();
    }

    /// <summary>False to take samples one by one, which gives the same and lets a test see that it does.</summary>
    internal bool TakesRuns { get; set; } = true;

    /// <summary>The settings it was made with.</summary>
    public MonitorSettings Settings => settings;

    /// <summary>Takes samples in the order they came, until all are taken or the room for events is used up.</summary>
    /// <param name="samples">The samples.</param>
    /// <param name="events">Room for at least <see cref="MostEventsPerSample"/> events.</param>
    /// <exception cref="ArgumentException">Too little room for events.</exception>
    public FeedResult Feed(ReadOnlySpan<TorqueSample> samples, Span<MonitorEvent> events)
    {
        CheckRoom(events);
        if (!MonitorInstruments.AreHeard)
        {
            return Take(samples, events);
        }

        SampleCounts before = Counts;
        FeedResult result;
        using (MonitorInstruments.Begin(samples.Length))
        {
            result = Take(samples, events);
        }

        MonitorInstruments.Tell(before, Counts, events.Slice(0, result.EventsWritten));
        return result;
    }

    /// <summary>Takes all samples and adds the events to a list.</summary>
    /// <exception cref="ArgumentNullException">The list is missing.</exception>
    public void Feed(ReadOnlySpan<TorqueSample> samples, ICollection<MonitorEvent> events)
    {
        Guard.NotNull(events, nameof(events));
        Span<MonitorEvent> room = new MonitorEvent[8 * MostEventsPerSample];
        ReadOnlySpan<TorqueSample> rest = samples;
        while (rest.Length > 0)
        {
            FeedResult result = Feed(rest, room);
            rest = rest.Slice(result.SamplesTaken);
            foreach (MonitorEvent seen in room.Slice(0, result.EventsWritten))
            {
                events.Add(seen);
            }
        }
    }

    private FeedResult Take(ReadOnlySpan<TorqueSample> samples, Span<MonitorEvent> events)
    {
        int written = 0;
        int taken = 0;
        while (taken < samples.Length && events.Length - written >= MostEventsPerSample)
        {
            taken += TakeQuiet(samples.Slice(taken));
            if (taken < samples.Length)
            {
                Step(in samples[taken++], events, ref written);
            }
        }

        return new FeedResult(taken, written);
    }

    private static void CheckRoom(Span<MonitorEvent> events)
    {
        if (events.Length < MostEventsPerSample)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"The span must hold at least {MostEventsPerSample} events; got {events.Length}."),
                    nameof(events));
        }
    }

    private void Step(in TorqueSample sample, Span<MonitorEvent> events, ref int written)
    {
        SampleStep kind = gate.Judge(in sample, out double stepS);
        if (kind == SampleStep.Dropped)
        {
            return;
        }

        bool follows = kind == SampleStep.Next;
        if (kind > SampleStep.Next)
        {
            Cut(stepS, sample.TimeS, events, ref written);
            if (kind != SampleStep.AfterEnd)
            {
                events[written++] = Gap(kind == SampleStep.AfterGap ? stepS : double.NaN);
            }

            stepS = 0;
        }

        highestNm = highestNm >= sample.TorqueNm ? highestNm : sample.TorqueNm;
        cycles.Add(sample.TorqueNm);
        if (engagement.Step(in sample, stepS, follows))
        {
            events[written++] = engagement.Event(isCut: false);
        }

        bool taints = WatchDevice(in sample, stepS, follows, events, ref written);
        WatchOverload(in sample, stepS, follows, events, ref written);
        peaks.Step(in sample, engagement.Works, taints);
        last = sample;
    }

    private bool WatchDevice(in TorqueSample sample, double stepS, bool follows, Span<MonitorEvent> events, ref int written)
    {
        double slip = sample.SpeedInRadPerS - (sample.SpeedOutRadPerS * inPerOut);
        if (slip < slipFromRadPerS && slip < meetShare * sample.SpeedInRadPerS && !slips.IsOpen && !thermometer.IsTooHot)
        {
            lastSlip = slip;
            trips.Hold(in sample);
            thermometer.Cool(stepS);
            return false;
        }

        bool slipped = slips.Step(in sample, in last, slip, follows ? lastSlip : double.NaN, stepS, engagement.Engaging, !trips.Tripped);
        bool tooHotEnded = thermometer.Step(sample.TimeS, stepS, slips.StepJ, follows);
        if (slips.IsOpen || slipped)
        {
            slips.Warm(thermometer.FaceK);
        }

        bool let = trips.Step(in sample, slip, engagement.Turns, engagement.Engaging);
        if (let)
        {
            if (slips.IsOpen)
            {
                trips.TakeOver(slips);
                slips.Forget();
            }

            events[written++] = trips.Event();
        }

        if (slipped)
        {
            EndSlip(double.IsNaN(slip), events, ref written);
        }

        if (tooHotEnded)
        {
            events[written++] = thermometer.Event(isCut: false);
        }

        lastSlip = slip;
        return slipped || slips.IsOpen || trips.Tripped;
    }

    private void WatchOverload(in TorqueSample sample, double stepS, bool follows, Span<MonitorEvent> events, ref int written)
    {
        bool was = overload.IsOpen;
        if (!was && sample.TorqueNm < settings.OverloadFromNm)
        {
            return;
        }

        if (overload.Step(sample.TimeS, stepS, last.TorqueNm, sample.TorqueNm, follows))
        {
            EndOverload(false, events, ref written);
        }
        else if (overload.IsOpen && !was)
        {
            overloadAtEngagement = engagement.Engaging;
        }
    }
}
