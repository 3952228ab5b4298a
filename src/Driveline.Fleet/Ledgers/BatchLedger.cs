using System.Globalization;
using Driveline.Monitoring;

namespace Driveline.Fleet.Ledgers;

/// <summary>
/// The batches of one driveline and its monitor: each is taken once and in its order, however often and in whatever order they come.
/// </summary>
/// <remarks>
/// Nothing here is stored or told; whoever holds it does that. Not thread-safe. The bytes of its state depend on the batches taken alone,
/// not on how they came.
/// </remarks>
internal sealed partial class BatchLedger
{
    /// <summary>Batches ahead of the next one that may wait.</summary>
    public const int Window = 16;

    /// <summary>Batches taken last by whose checksum one sent again is known.</summary>
    public const int Remembered = 32;

    /// <summary>With so many alarms not yet told, no batch is taken.</summary>
    public const int MostOpenAlarms = 512;

    private readonly OverloadMonitor monitor;
    private readonly SortedDictionary<long, TelemetryBatch> waiting = [];
    private readonly List<uint> checksums = [];
    private readonly List<OpenAlarm> outbox = [];
    private readonly List<MonitorEvent> seen = [];
    private long through;
    private long lost;

    public BatchLedger(OverloadMonitor monitor) => this.monitor = monitor;

    public OverloadMonitor Monitor => monitor;

    /// <summary>All batches up to this number are taken.</summary>
    public long Through => through;

    /// <summary>Batches lost for good.</summary>
    public long Lost => lost;

    /// <summary>Batches that wait.</summary>
    public int Waiting => waiting.Count;

    /// <summary>Alarms not yet told, in their order.</summary>
    public IReadOnlyList<OpenAlarm> Outbox => outbox;

    /// <summary>Takes a batch, keeps it waiting, or says why not.</summary>
    public LedgerAnswer Offer(TelemetryBatch batch)
    {
        if (Refusal(batch) is { } why)
        {
            return LedgerAnswer.Refused(why);
        }

        long sequence = batch.Sequence;
        if (sequence <= through)
        {
            return LedgerAnswer.Of(BatchOutcome.Repeated);
        }

        if (outbox.Count >= MostOpenAlarms)
        {
            return LedgerAnswer.Of(BatchOutcome.Busy);
        }

        waiting.TryAdd(sequence, batch);
        while (waiting.Count > 0 && outbox.Count < MostOpenAlarms)
        {
            TelemetryBatch first = waiting.First().Value;
            if (first.Sequence - first.LostBefore > through + 1)
            {
                break;
            }

            waiting.Remove(first.Sequence);
            Take(first);
        }

        return sequence <= through ? LedgerAnswer.Of(BatchOutcome.Taken) : Gap();
    }

    /// <summary>Strikes out the first alarms, which were told.</summary>
    public void Told(int count) => outbox.RemoveRange(0, count);

    private LedgerAnswer Gap()
    {
        TelemetryBatch first = waiting.First().Value;
        return LedgerAnswer.Missing(through + 1, Math.Max(through + 1, first.Sequence - first.LostBefore - 1));
    }

    private FleetRefusal? Refusal(TelemetryBatch batch)
    {
        long sequence = batch.Sequence, newest = through + Window;
        if (batch.Samples.Length > TelemetryBatch.MostSamples)
        {
            return Must("samples", "at most " + Text(TelemetryBatch.MostSamples), Text(batch.Samples.Length));
        }

        if (batch.LostBefore < 0 || batch.LostBefore >= Math.Max(1, sequence))
        {
            return Must("lostBefore", "from 0 to " + Text(Math.Max(0, sequence - 1)), Text(batch.LostBefore));
        }

        long back = through - sequence;
        if (sequence < 1 || back >= checksums.Count || sequence - batch.LostBefore > newest)
        {
            long oldest = Math.Max(1, through - checksums.Count + 1);
            return Must("sequence", "from " + Text(oldest) + " to " + Text(newest), Text(sequence));
        }

        uint? before = back >= 0 ? checksums[^((int)back + 1)]
            : waiting.TryGetValue(sequence, out TelemetryBatch? same) ? same.Checksum()
            : null;
        return before is { } known && known != batch.Checksum()
            ? Must("sequence", "from " + Text(through + 1) + " to " + Text(newest) + " for new samples",
                Text(sequence) + ", which came before with others")
            : null;
    }

    private void Take(TelemetryBatch batch)
    {
        long skipped = batch.Sequence - through - 1;
        lost += skipped;
        for (long k = Math.Min(skipped, Remembered); k > 0; k--)
        {
            checksums.Add(0);
        }

        checksums.Add(batch.Checksum());
        checksums.RemoveRange(0, Math.Max(0, checksums.Count - Remembered));
        through = batch.Sequence;
        if (batch.ClockIsNew)
        {
            monitor.RestartClock();
        }

        seen.Clear();
        monitor.Feed(batch.Samples, seen);
        if (batch.Ends)
        {
            monitor.Finish(seen);
        }

        for (int k = 0; k < seen.Count; k++)
        {
            if (seen[k].Kind != MonitorEventKind.Engagement)
            {
                outbox.Add(new OpenAlarm(batch.Sequence, k, seen[k]));
            }
        }
    }

    private static FleetRefusal Must(string field, string range, string received) => new(field, range, received);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
