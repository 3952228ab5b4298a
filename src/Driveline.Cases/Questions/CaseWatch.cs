using System.Diagnostics.CodeAnalysis;
using Driveline.Clutches;
using Driveline.Monitoring;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>A log of one driveline as it is watched, with what a case knows of the driveline; torques and speeds are at the PTO.</summary>
/// <remarks>
/// From the case come the first slip clutch whose heat path is known, cooled as still air cools it, and every shear bolt and every part
/// with a fatigue category, whose fatigue is followed. The first 10 000 events are kept, the rest are counted; a listener hears all.
/// </remarks>
public sealed class CaseWatch
{
    private const int MostEvents = 10_000;

    private readonly OverloadMonitor monitor;
    private readonly IReadOnlyList<FatigueDetail> details;
    private readonly List<MonitorEvent> events = [];
    private readonly MonitorEvent[] room = new MonitorEvent[16 * OverloadMonitor.MostEventsPerSample];
    private Action<MonitorEvent>? listener;
    private long leftOut;

    private CaseWatch(OverloadMonitor monitor, CaseFile? file)
    {
        this.monitor = monitor;
        details = file is null || monitor.Settings.IsUpperBound ? [] : [.. CaseFatigue.AllOf(file)];
    }

    /// <summary>What came in so far.</summary>
    public SampleCounts Counts => monitor.Counts;

    /// <summary>Watches a driveline of which nothing else is known.</summary>
    /// <exception cref="ArgumentNullException">The settings are missing.</exception>
    public static CaseWatch Of(MonitorSettings settings) => new(new OverloadMonitor(settings), null);

    /// <summary>Watches the driveline of a case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">Facts contradict each other; <see cref="CaseAssessment.Errors"/> lists them.</exception>
    public static CaseWatch Of(MonitorSettings settings, CaseFile file) =>
        new(new OverloadMonitor(Settings(settings, Guard.NotNull(file, nameof(file)))), file);

    /// <summary>Goes on from a saved state; false, and why, when it is refused.</summary>
    /// <param name="settings">The settings of the watch that was saved.</param>
    /// <param name="file">Its case; null when it had none.</param>
    /// <param name="snapshot">What <see cref="Save"/> gave.</param>
    /// <param name="watch">The watch; null when it is refused.</param>
    /// <param name="problem">Why it is refused.</param>
    /// <exception cref="ArgumentNullException">The settings are missing.</exception>
    public static bool TryResume(
        MonitorSettings settings, CaseFile? file, ReadOnlySpan<byte> snapshot, [NotNullWhen(true)] out CaseWatch? watch,
        out SnapshotProblem problem)
    {
        MonitorSettings watched = file is null ? settings : Settings(settings, file);
        watch = OverloadMonitor.TryRestore(watched, snapshot, out OverloadMonitor? monitor, out problem)
            ? new CaseWatch(monitor, file) : null;
        return watch is not null;
    }

    /// <summary>Has every event told from here on, in the order they end.</summary>
    public void Tell(Action<MonitorEvent> to) => listener = Guard.NotNull(to, nameof(to));

    /// <summary>The state as bytes; what goes on is not ended, so that the watch that resumes ends it.</summary>
    public byte[] Save() => monitor.Save();

    /// <summary>Says that the clock of the samples begins anew with the next one.</summary>
    public void RestartClock() => monitor.RestartClock();

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

    /// <summary>What the log shows so far; what goes on is not ended.</summary>
    /// <param name="horizon">The time of work whose highest torque is asked for.</param>
    /// <param name="acted">Whether the protection has acted in normal work.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public MonitorReport Report(Duration horizon, ActedInWork acted) => MonitorReport.Of(monitor, monitor.LearnWorkPeak(horizon, acted))
        .WithEvents(events, leftOut)
        .WithLives([.. details.Select(monitor.ConsumedLife)]);

    /// <summary>Ends the log and says what it shows.</summary>
    /// <param name="horizon">The time of work whose highest torque is asked for.</param>
    /// <param name="acted">Whether the protection has acted in normal work.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public MonitorReport Finish(Duration horizon, ActedInWork acted)
    {
        Keep(monitor.Finish(room));
        return Report(horizon, acted);
    }

    internal static MonitorSettings Settings(MonitorSettings settings, CaseFile file)
    {
        Guard.NotNull(settings, nameof(settings));
        foreach (CaseClutch clutch in CaseClutch.AllOf(file))
        {
            if (clutch.Fitted.CooledHeatPath is { } path)
            {
                return settings.WithClutch(path, clutch.Clutch!.Facing, ClutchAir.Temperature);
            }
        }

        return settings;
    }

    private void Keep(int count)
    {
        for (int k = 0; k < count; k++)
        {
            listener?.Invoke(room[k]);
            if (events.Count < MostEvents)
            {
                events.Add(room[k]);
            }
            else
            {
                leftOut++;
            }
        }
    }
}
