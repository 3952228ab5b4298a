using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>What a log of a driveline shows, ready to be written. Immutable.</summary>
public sealed class MonitorReport
{
    private MonitorReport(OverloadMonitor monitor, WorkPeakEstimate workPeak)
    {
        Counts = monitor.Counts;
        History = monitor.History;
        SlipTorque = monitor.SlipTorqueTrend();
        Cycles = monitor.CountedRanges().Sum(range => range.Cycles);
        WorkPeak = workPeak;
    }

    private MonitorReport(MonitorReport other)
    {
        Counts = other.Counts;
        History = other.History;
        SlipTorque = other.SlipTorque;
        Cycles = other.Cycles;
        WorkPeak = other.WorkPeak;
        Events = other.Events;
        EventsLeftOut = other.EventsLeftOut;
        Lives = other.Lives;
        BadRows = other.BadRows;
        FirstBadRows = other.FirstBadRows;
    }

    /// <summary>What came in.</summary>
    public SampleCounts Counts { get; }

    /// <summary>What the driveline did.</summary>
    public MonitorHistory History { get; }

    /// <summary>The highest torque of normal work to come.</summary>
    public WorkPeakEstimate WorkPeak { get; }

    /// <summary>How the slip torque drifts; null with too few slips.</summary>
    public SlipTorqueTrend? SlipTorque { get; }

    /// <summary>Load cycles counted, those still open as half cycles.</summary>
    public double Cycles { get; }

    /// <summary>The events, in the order they ended.</summary>
    public IReadOnlyList<MonitorEvent> Events { get; private init; } = [];

    /// <summary>Further events that were not kept.</summary>
    public long EventsLeftOut { get; private init; }

    /// <summary>The life used up by each part whose fatigue is followed.</summary>
    public IReadOnlyList<ConsumedLife> Lives { get; private init; } = [];

    /// <summary>Rows of the log that could not be read.</summary>
    public long BadRows { get; private init; }

    /// <summary>The first rows that were left out for each reason, those that could be read too.</summary>
    public IReadOnlyList<RowProblem> FirstBadRows { get; private init; } = [];

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings =>
    [
        .. WorkPeak.Findings, .. SlipTorque?.Findings ?? [], .. Lives.SelectMany(life => life.Findings),
    ];

    /// <summary>What a monitor knows now, with a work peak learned from it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static MonitorReport Of(OverloadMonitor monitor, WorkPeakEstimate workPeak) =>
        new(Guard.NotNull(monitor, nameof(monitor)), Guard.NotNull(workPeak, nameof(workPeak)));

    /// <summary>The same with the events that were kept, and how many were not.</summary>
    /// <exception cref="ArgumentNullException">The events are missing.</exception>
    public MonitorReport WithEvents(IReadOnlyList<MonitorEvent> events, long leftOut) =>
        new(this) { Events = [.. Guard.NotNull(events, nameof(events))], EventsLeftOut = leftOut };

    /// <summary>The same with the life of parts.</summary>
    /// <exception cref="ArgumentNullException">The lives are missing.</exception>
    public MonitorReport WithLives(IReadOnlyList<ConsumedLife> lives) => new(this) { Lives = [.. Guard.NotNull(lives, nameof(lives))] };

    /// <summary>The same with the number of rows that could not be read, and the first that were left out.</summary>
    /// <exception cref="ArgumentNullException">The rows are missing.</exception>
    public MonitorReport WithBadRows(long count, IReadOnlyList<RowProblem> first) =>
        new(this) { BadRows = count, FirstBadRows = [.. Guard.NotNull(first, nameof(first))] };
}
