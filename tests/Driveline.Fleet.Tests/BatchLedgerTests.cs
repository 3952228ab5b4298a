using Driveline.Fleet.Ledgers;
using Driveline.Monitoring;

namespace Driveline.Fleet.Tests;

public class BatchLedgerTests
{
    private readonly BatchLedger ledger = new(new OverloadMonitor(TestFleet.Settings));

    [Fact]
    public void Offer_WithOneMissing_NamesItAndTakesAllWhenItComes()
    {
        TelemetryBatch[] batches = TestFleet.Batches(1, 6, 10);
        ledger.Offer(batches[0]);
        Assert.Equal(LedgerAnswer.Missing(2, 3), ledger.Offer(batches[3]));
        Assert.Equal(LedgerAnswer.Missing(2, 2), ledger.Offer(batches[2]));
        Assert.Equal(2, ledger.Waiting);
        Assert.Equal(1, ledger.Through);
        Assert.Equal(BatchOutcome.Taken, ledger.Offer(batches[1]).Outcome);
        Assert.Equal(4, ledger.Through);
        Assert.Equal(0, ledger.Waiting);
    }

    [Theory]
    [InlineData(0, "from 1 to 16", "0")]
    [InlineData(-3, "from 1 to 16", "-3")]
    [InlineData(51, "from 3 to 50", "51")]   // 34 taken, and 16 may wait
    [InlineData(2, "from 3 to 50", "2")]     // 34 - 32 = 2 is no longer remembered
    [InlineData(7, "from 35 to 50 for new samples", "7, which came before with others")]
    public void Offer_OfANumberOutOfItsRange_SaysTheRange(long sequence, string range, string received)
    {
        int count = sequence is 2 or 7 or 51 ? 34 : 0;
        foreach (TelemetryBatch batch in TestFleet.Batches(1, 34, 5).Take(count))
        {
            ledger.Offer(batch);
        }

        byte[] before = ledger.Save(StateFormat.Packed);
        FleetRefusal why = ledger.Offer(TelemetryBatch.Of(sequence, TestFleet.Work(2, 5))).Refusal!;
        Assert.Equal(("sequence", range, received), (why.Field, why.Range, why.Received));
        Assert.Equal(before, ledger.Save(StateFormat.Packed));
    }

    [Fact]
    public void Offer_OfTheSameNumberWithOtherSamplesWhileItWaits_IsRefused()
    {
        ledger.Offer(TelemetryBatch.Of(3, TestFleet.Work(1, 5)));
        Assert.Equal(BatchOutcome.Waiting, ledger.Offer(TelemetryBatch.Of(3, TestFleet.Work(1, 5))).Outcome);
        Assert.Equal("sequence must be from 1 to 16 for new samples; got 3, which came before with others.",
            ledger.Offer(TelemetryBatch.Of(3, TestFleet.Work(2, 5))).Refusal!.ToString());
    }

    [Fact]
    public void Offer_OfTooManySamples_IsRefused()
    {
        FleetRefusal why = ledger.Offer(TelemetryBatch.Of(1, new TorqueSample[2049])).Refusal!;
        Assert.Equal("samples must be at most 2048; got 2049.", why.ToString());
        Assert.Equal(BatchOutcome.Taken, ledger.Offer(TelemetryBatch.Of(1, new TorqueSample[2048])).Outcome);
    }

    [Fact]
    public void Offer_WithBatchesLostForGood_GoesOnAndCountsThem()
    {
        TelemetryBatch[] batches = TestFleet.Batches(1, 9, 10);
        ledger.Offer(batches[0]);
        Assert.Equal(BatchOutcome.Taken, ledger.Offer(batches[4].WithLostBefore(3)).Outcome);
        Assert.Equal((5, 3), (ledger.Through, ledger.Lost));
        Assert.Equal(BatchOutcome.Refused, ledger.Offer(batches[2]).Outcome);
        Assert.Equal("lostBefore must be from 0 to 5; got 6.", ledger.Offer(batches[5].WithLostBefore(6)).Refusal!.ToString());
    }

    [Fact]
    public void Offer_WithManyAlarmsOpen_IsBusyUntilTheyAreTold()
    {
        TelemetryBatch[] batches = TestFleet.Batches(1, 200, 200);
        int taken = 0;
        while (ledger.Offer(batches[taken]).Outcome == BatchOutcome.Taken)
        {
            taken++;
        }

        Assert.Equal(BatchOutcome.Busy, ledger.Offer(batches[taken]).Outcome);
        Assert.Equal(taken, ledger.Through);
        ledger.Told(ledger.Outbox.Count);
        Assert.Equal(BatchOutcome.Taken, ledger.Offer(batches[taken]).Outcome);
    }

    [Fact]
    public void Offer_WithANewClock_GoesOnAtTheNewTime()
    {
        ledger.Offer(TelemetryBatch.Of(1, [new TorqueSample(1000, 56, 300)]));
        ledger.Offer(TelemetryBatch.Of(2, [new TorqueSample(5, 56, 300)]));
        ledger.Offer(TelemetryBatch.Of(3, [new TorqueSample(6, 56, 300)]).WithNewClock());
        Assert.Equal((2, 1), (ledger.Monitor.Counts.Taken, ledger.Monitor.Counts.Late));
    }

    [Fact]
    public void Restore_OfANewerFormat_IsRefusedByAnOldSilo()
    {
        byte[] packed = ledger.Save(StateFormat.Packed);
        var error = Assert.Throws<FleetStateException>(() => BatchLedger.Restore(TestFleet.Settings, packed, StateFormat.Wide));
        Assert.Equal("The stored state is of format 2; this silo reads 1 to 1. It stays as it is for a newer silo.", error.Message);
    }

    [Fact]
    public void Restore_AnyBitFlipped_IsRefused()
    {
        foreach (TelemetryBatch batch in TestFleet.Batches(3, 5, 50))
        {
            ledger.Offer(batch);
        }

        byte[] bytes = ledger.Save(StateFormat.Packed);
        for (int k = 0; k < bytes.Length; k++)
        {
            bytes[k] ^= (byte)(1 << (k % 8));
            Assert.Throws<FleetStateException>(() => BatchLedger.Restore(TestFleet.Settings, bytes, StateFormat.Packed));
            bytes[k] ^= (byte)(1 << (k % 8));
        }
    }

    // Of an empty ledger: mark 4, format 1, through 1, lost 1, checksums 1, and then the number of alarms as a packed number.
    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFF, 0xFF, 0xFF, 0x07 })]
    [InlineData(new byte[] { 0xFF, 0xFF, 0xFF, 0xFF, 0x0F })]
    public void Restore_OfMoreAlarmsThanBytes_IsRefusedBeforeRoomIsMade(byte[] count)
    {
        const int before = 4 + 1 + 1 + 1 + 1;
        byte[] whole = ledger.Save(StateFormat.Packed);
        Assert.Equal(0, whole[before]);
        byte[] content = [.. whole[..before], .. count, .. whole[(before + 1)..^4]];
        byte[] bytes = [.. content, .. BitConverter.GetBytes(Driveline.Monitoring.Crc32.Of(content))];
        var error = Assert.Throws<FleetStateException>(() => BatchLedger.Restore(TestFleet.Settings, bytes, StateFormat.Packed));
        Assert.Equal("The stored state cannot be read.", error.Message);
    }

    [Fact]
    public void State_OfADayOfWork_FitsIn4Kilobytes()
    {
        TelemetryBatch[] batches = TestFleet.Batches(8, 864, 1000);
        foreach (TelemetryBatch batch in batches)
        {
            ledger.Offer(batch);
            ledger.Told(ledger.Outbox.Count);
        }

        // 146 bytes at most are the ledger's own: 4 mark, 1 format, 2 · 9 numbers, 1 + 32 · 4 checksums, 1 alarms, and 4 checksum.
        Assert.InRange(ledger.Save(StateFormat.Packed).Length, 1000, 4096);
        Assert.InRange(ledger.Save(StateFormat.Wide).Length, 5000, 20_200);
    }
}
