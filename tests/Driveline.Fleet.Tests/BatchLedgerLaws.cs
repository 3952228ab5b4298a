using Driveline.Fleet.Ledgers;
using Driveline.Monitoring;

namespace Driveline.Fleet.Tests;

/// <summary>What holds however batches come.</summary>
public class BatchLedgerLaws
{
    // Each batch comes once or more, none more than 15 places early: the bound of what waits.
    [Law(MaxTest = 60)]
    public void Offer_ShuffledAndRepeated_GivesTheStateAndAlarmsOfTheOrder(int seed)
    {
        TelemetryBatch[] batches = TestFleet.Batches(seed, 40, 30);
        (byte[] state, OpenAlarm[] alarms) = Run(batches);

        var random = new Random(seed ^ 77);
        var ledger = new BatchLedger(new OverloadMonitor(TestFleet.Settings));
        var seen = new List<OpenAlarm>();
        while (ledger.Through < batches.Length)
        {
            long early = ledger.Through + random.Next(0, BatchLedger.Window) + 1;
            long late = Math.Max(1, ledger.Through - random.Next(0, 8));
            long sequence = Math.Min(random.Next(3) == 0 ? late : early, batches.Length);
            long before = ledger.Through;
            LedgerAnswer answer = ledger.Offer(batches[sequence - 1]);
            Assert.Equal(
                sequence <= before ? BatchOutcome.Repeated : sequence <= ledger.Through ? BatchOutcome.Taken : BatchOutcome.Waiting,
                answer.Outcome);
            Assert.Equal(answer.Outcome == BatchOutcome.Waiting ? ledger.Through + 1 : 0, answer.MissingFrom);
            Tell(ledger, seen, random);
            ledger = random.Next(9) == 0 ? Reload(ledger, random) : ledger;
        }

        Tell(ledger, seen, null);
        Assert.Equal(alarms, seen);
        Assert.Equal(state, ledger.Save(StateFormat.Packed));
        Assert.NotEmpty(alarms);
    }

    // A ledger that is loaded from its bytes begins without the batches that waited, and with every alarm still open.
    private static BatchLedger Reload(BatchLedger ledger, Random random)
    {
        StateFormat format = random.Next(2) == 0 ? StateFormat.Wide : StateFormat.Packed;
        BatchLedger loaded = BatchLedger.Restore(TestFleet.Settings, ledger.Save(format), StateFormat.Packed);
        Assert.Equal(ledger.Outbox, loaded.Outbox);
        Assert.Equal(ledger.Save(StateFormat.Packed), loaded.Save(StateFormat.Packed));
        return loaded;
    }

    [Law(MaxTest = 60)]
    public void Offer_OfAnyNumber_ChangesNothingWhenRefused(int seed, long sequence, byte length)
    {
        TelemetryBatch[] batches = TestFleet.Batches(seed, 40, 10);
        var ledger = new BatchLedger(new OverloadMonitor(TestFleet.Settings));
        foreach (TelemetryBatch batch in batches)
        {
            ledger.Offer(batch);
        }

        byte[] state = ledger.Save(StateFormat.Packed);
        LedgerAnswer answer = ledger.Offer(TelemetryBatch.Of(sequence, TestFleet.Work(seed + 1, length + 1)));
        bool isAhead = sequence is > 40 and <= 40 + BatchLedger.Window;
        Assert.Equal(isAhead ? sequence == 41 ? BatchOutcome.Taken : BatchOutcome.Waiting : BatchOutcome.Refused, answer.Outcome);
        Assert.Equal(isAhead, answer.Refusal is null);
        if (sequence != 41)
        {
            Assert.Equal(state, ledger.Save(StateFormat.Packed));
        }
    }

    private static (byte[] State, OpenAlarm[] Alarms) Run(TelemetryBatch[] batches)
    {
        var ledger = new BatchLedger(new OverloadMonitor(TestFleet.Settings));
        var seen = new List<OpenAlarm>();
        foreach (TelemetryBatch batch in batches)
        {
            Assert.Equal(BatchOutcome.Taken, ledger.Offer(batch).Outcome);
            Tell(ledger, seen, null);
        }

        return (ledger.Save(StateFormat.Packed), [.. seen]);
    }

    private static void Tell(BatchLedger ledger, List<OpenAlarm> seen, Random? random)
    {
        int count = random is null ? ledger.Outbox.Count : random.Next(0, ledger.Outbox.Count + 1);
        seen.AddRange(ledger.Outbox.Take(count));
        ledger.Told(count);
    }
}
