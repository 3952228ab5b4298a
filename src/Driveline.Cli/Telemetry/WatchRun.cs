using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Cli.Telemetry;

/// <summary>One watch over a log: learns the period from the first samples, names rows that are left out, and may be saved.</summary>
internal sealed class WatchRun
{
    /// <summary>Samples from which the period is found.</summary>
    public const int SamplesForPeriod = 64;

    private const double ShortestS = 1e-5;
    private const double LongestS = 3600;

    private readonly Func<Duration, MonitorSettings> settingsOf;
    private readonly CaseFile? file;
    private readonly RowNotes notes;
    private readonly Action<MonitorEvent> tell;
    private readonly List<TorqueSample> waiting = [];
    private readonly List<long> waitingLines = [];
    private double periodS = double.NaN;
    private CaseWatch? watch;

    /// <summary>A watch that has seen nothing.</summary>
    /// <param name="settingsOf">The settings for a period.</param>
    /// <param name="file">The case; null without one.</param>
    /// <param name="notes">Where rows are named.</param>
    /// <param name="tell">Hears each event.</param>
    public WatchRun(Func<Duration, MonitorSettings> settingsOf, CaseFile? file, RowNotes notes, Action<MonitorEvent> tell)
    {
        this.settingsOf = settingsOf;
        this.file = file;
        this.notes = notes;
        this.tell = tell;
    }

    /// <summary>Goes on from a state.</summary>
    /// <exception cref="BadInputException">It belongs to other settings.</exception>
    public void Resume(WatchState state, string from)
    {
        notes.Unreadable = state.Unreadable;
        if (double.IsNaN(state.PeriodS))
        {
            waiting.AddRange(state.Waiting);
            waitingLines.AddRange(new long[waiting.Count]);
            return;
        }

        periodS = state.PeriodS;
        if (!CaseWatch.TryResume(settingsOf(Duration.FromSeconds(periodS)), file, state.Monitor, out watch, out SnapshotProblem problem))
        {
            throw new BadInputException("--resume '" + from + "' " + (problem switch
            {
                SnapshotProblem.OtherSettings => "belongs to another case, other options or another kind of log.",
                SnapshotProblem.NewerVersion => "was saved by a newer version.",
                _ => "is damaged.",
            }));
        }

        watch!.Tell(tell);
    }

    /// <summary>Says that the clock of the log begins anew.</summary>
    public void RestartClock()
    {
        if (waiting.Count > 0)
        {
            Begin();
        }

        watch?.RestartClock();
    }

    /// <summary>Takes a sample of a line.</summary>
    public void Take(in TorqueSample sample, long line)
    {
        if (watch is not null)
        {
            Feed(watch, in sample, line);
            return;
        }

        waiting.Add(sample);
        waitingLines.Add(line);
        if (waiting.Count == SamplesForPeriod)
        {
            Begin();
        }
    }

    /// <summary>The state, with that of a decoder; what goes on is not ended.</summary>
    public WatchState Save(EngineTorqueDecoder? decoder) => new()
    {
        PeriodS = periodS,
        Waiting = [.. waiting],
        Unreadable = notes.Unreadable,
        Decoder = decoder?.Save() ?? [],
        Monitor = watch?.Save() ?? [],
    };

    /// <summary>What the log shows so far.</summary>
    public MonitorReport Report(Duration horizon, ActedInWork acted)
    {
        if (watch is not null)
        {
            return Noted(watch.Report(horizon, acted));
        }

        CaseWatch soFar = Open(Duration.FromSeconds(PeriodOf(waiting)));
        soFar.Feed(waiting.ToArray());
        return Noted(soFar.Report(horizon, acted));
    }

    /// <summary>Ends the log and says what it shows.</summary>
    public MonitorReport Finish(Duration horizon, ActedInWork acted)
    {
        if (watch is null)
        {
            Begin();
        }

        return Noted(watch!.Finish(horizon, acted));
    }

    // The middle of the steps of the first samples, to a microsecond.
    public static double PeriodOf(IReadOnlyList<TorqueSample> samples)
    {
        double[] steps =
        [
            .. samples.Zip(samples.Skip(1), (before, after) => after.TimeS - before.TimeS)
                .Where(step => step is >= ShortestS and <= LongestS).Order(),
        ];
        return steps.Length == 0 ? 1 : Math.Max(ShortestS, Math.Round(steps[steps.Length / 2], 6));
    }

    private MonitorReport Noted(MonitorReport report) => report.WithBadRows(notes.Unreadable, notes.First);

    private CaseWatch Open(Duration period) =>
        file is null ? CaseWatch.Of(settingsOf(period)) : CaseWatch.Of(settingsOf(period), file);

    private void Begin()
    {
        periodS = PeriodOf(waiting);
        watch = Open(Duration.FromSeconds(periodS));
        watch.Tell(tell);
        for (int k = 0; k < waiting.Count; k++)
        {
            Feed(watch, waiting[k], waitingLines[k]);
        }

        waiting.Clear();
        waitingLines.Clear();
    }

    private void Feed(CaseWatch to, in TorqueSample sample, long line)
    {
        SampleCounts before = to.Counts;
        to.Feed(new ReadOnlySpan<TorqueSample>(in sample));
        SampleCounts after = to.Counts;
        if (after.Taken == before.Taken)
        {
            notes.Name(line, after.Late > before.Late ? RowTrouble.Late
                : after.Duplicate > before.Duplicate ? RowTrouble.Duplicate
                : after.OutOfRange > before.OutOfRange ? RowTrouble.OutOfRange
                : RowTrouble.NotFinite);
        }
    }
}
