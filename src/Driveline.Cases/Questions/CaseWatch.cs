using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Monitoring;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>A log of one driveline as it is watched, with what a case knows of the driveline; torques and speeds are at the PTO.</summary>
/// <remarks>
/// From the case come the first slip clutch whose heat path is known, cooled as still air cools it, and every shear bolt, whose fatigue is
/// followed. The first 10 000 events are kept, the rest are counted.
/// </remarks>
public sealed class CaseWatch
{
    private const int MostEvents = 10_000;

    private readonly OverloadMonitor monitor;
    private readonly IReadOnlyList<FatigueDetail> details;
    private readonly List<MonitorEvent> events = [];
    private readonly MonitorEvent[] room = new MonitorEvent[16 * OverloadMonitor.MostEventsPerSample];
    private long leftOut;

    private CaseWatch(MonitorSettings settings, IReadOnlyList<FatigueDetail> details)
    {
        monitor = new OverloadMonitor(settings);
        this.details = details;
    }

    /// <summary>Watches a driveline of which nothing else is known.</summary>
    /// <exception cref="ArgumentNullException">The settings are missing.</exception>
    public static CaseWatch Of(MonitorSettings settings) => new(Guard.NotNull(settings, nameof(settings)), []);

    /// <summary>Watches the driveline of a case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">Facts contradict each other; <see cref="CaseQuestion"/> lists them.</exception>
    public static CaseWatch Of(MonitorSettings settings, CaseFile file)
    {
        MonitorSettings watched = Guard.NotNull(settings, nameof(settings));
        foreach (CaseClutch clutch in CaseClutch.AllOf(file))
        {
            if (clutch.Fitted.CooledHeatPath is { } path)
            {
                watched = watched.WithClutch(path, clutch.Clutch!.Facing, ClutchAir.Temperature);
                break;
            }
        }

        return new CaseWatch(watched, [.. DetailsOf(file)]);
    }

    /// <summary>Takes samples in the order they came.</summary>
    public void Feed(ReadOnlySpan<TorqueSample> samples)
    {
        ReadOnlySpan<TorqueSample> rest = samples;
        while (rest.Length > 0)
        {
            FeedResult result = monitor.Feed(rest, room);
            rest = rest.Slice(result.SamplesTaken);
            Keep(result.EventsWritten);
        }
    }

    /// <summary>Ends the log and says what it shows.</summary>
    /// <param name="horizon">The time of work whose highest torque is asked for.</param>
    /// <param name="acted">Whether the protection has acted in normal work.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public MonitorReport Finish(Duration horizon, ActedInWork acted)
    {
        Keep(monitor.Finish(room));
        return MonitorReport.Of(monitor, monitor.LearnWorkPeak(horizon, acted))
            .WithEvents(events, leftOut)
            .WithLives([.. details.Select(monitor.ConsumedLife)]);
    }

    private static IEnumerable<FatigueDetail> DetailsOf(CaseFile file)
    {
        if (CaseQuestion.Of(file).Question?.Chain is not { } chain)
        {
            yield break;
        }

        foreach (ShearBoltDevice bolt in chain.Devices.OfType<ShearBoltDevice>())
        {
            double ratio = chain.Nodes[chain.IndexOf(bolt)].FromPto(Band.Exactly(1)).Expected;
            if (Guard.IsFinite(ratio) && ratio > 0)
            {
                yield return FatigueDetail.Bolts(bolt.Name, bolt.BreakTorque.Joint).WithTorqueRatio(ratio);
            }
        }
    }

    private void Keep(int count)
    {
        int kept = Math.Min(count, MostEvents - events.Count);
        events.AddRange(room.Take(kept));
        leftOut += count - kept;
    }
}
