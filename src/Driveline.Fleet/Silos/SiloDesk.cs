using System.Collections.Concurrent;

namespace Driveline.Fleet.Silos;

/// <summary>What the drivelines of one silo share: the room for batches, and the figures for the page. Thread-safe.</summary>
internal sealed class SiloDesk(FleetOptions options)
{
    public const int Worst = 10;
    public const int Latest = 20;

    private readonly ConcurrentDictionary<string, DrivelineStatus> drivelines = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<ToldAlarm> latest = new();
    private readonly long[] batches = new long[Enum.GetValues<BatchOutcome>().Length];
    private readonly AckTimes acks = new();
    private readonly DateTime startedUtc = DateTime.UtcNow;
    private int inside;
    private long alarms;
    private long failures;
    private (DateTime AtUtc, long Batches) before = (DateTime.UtcNow, 0);

    public FleetOptions Options => options;

    /// <summary>Writes that failed; each such driveline was loaded anew.</summary>
    public long Failures => Interlocked.Read(ref failures);

    /// <summary>Room for one more batch; false when there is none.</summary>
    public bool TryEnter()
    {
        if (Interlocked.Increment(ref inside) <= options.MostBatches)
        {
            return true;
        }

        Interlocked.Decrement(ref inside);
        return false;
    }

    public void Leave() => Interlocked.Decrement(ref inside);

    public void Answered(BatchOutcome outcome, TimeSpan time)
    {
        Interlocked.Increment(ref batches[(int)outcome]);
        if (outcome is BatchOutcome.Taken)
        {
            acks.Add(time);
        }
    }

    public void Failed() => Interlocked.Increment(ref failures);

    public void Stands(DrivelineStatus status) => drivelines[status.Driveline] = status;

    public void Leaves(string driveline) => drivelines.TryRemove(driveline, out _);

    public void Told(IReadOnlyList<FleetAlarm> told)
    {
        Interlocked.Add(ref alarms, told.Count);
        foreach (FleetAlarm alarm in told.Skip(told.Count - Latest))
        {
            latest.Enqueue(new ToldAlarm
            {
                Driveline = alarm.Id.Driveline,
                Id = alarm.Id.ToString(),
                Kind = alarm.Event.Kind.ToString(),
                StartS = alarm.Event.StartS,
                DurationS = alarm.Event.DurationS,
                PeakNm = alarm.Event.PeakNm,
                ToldUtc = DateTime.UtcNow,
            });
        }

        while (latest.Count > Latest)
        {
            latest.TryDequeue(out _);
        }
    }

    /// <summary>The figures now; the rate is that since the last time they were asked for.</summary>
    public SiloFigures Figures(string silo)
    {
        long[] counted = [.. batches];
        DateTime now = DateTime.UtcNow;
        double seconds = Math.Max(0.001, (now - before.AtUtc).TotalSeconds);
        long taken = counted[(int)BatchOutcome.Taken];
        double rate = (taken - before.Batches) / seconds;
        before = (now, taken);
        var worst = new List<DrivelineStatus>();
        foreach (DrivelineStatus status in drivelines.Values)
        {
            worst.Add(status);
            if (worst.Count == 10 * Worst)
            {
                Shorten(worst);
            }
        }

        Shorten(worst);
        return new SiloFigures
        {
            Silo = silo,
            StartedUtc = startedUtc,
            Drivelines = drivelines.Count,
            Batches = counted,
            BatchesPerSecond = rate,
            MiddleMs = acks.Quantile(0.5),
            SlowestMs = acks.Quantile(0.99),
            Alarms = Interlocked.Read(ref alarms),
            MemoryBytes = Environment.WorkingSet,
            StateFormat = (int)options.StateFormat,
            Worst = [.. worst],
            Latest = [.. latest],
        };
    }

    private static void Shorten(List<DrivelineStatus> worst)
    {
        worst.Sort(DrivelineStatus.WorstFirst);
        worst.RemoveRange(Math.Min(Worst, worst.Count), Math.Max(0, worst.Count - Worst));
    }
}
