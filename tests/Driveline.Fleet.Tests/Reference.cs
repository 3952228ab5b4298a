using Driveline.Fleet.Ledgers;
using Driveline.Fleet.Silos;
using Driveline.Monitoring;

namespace Driveline.Fleet.Tests;

/// <summary>What one ledger makes of batches in their order, without any silo.</summary>
internal static class Reference
{
    public static (byte[] State, AlarmId[] Alarms) Of(string name, IEnumerable<TelemetryBatch> batches)
    {
        MonitorSettings settings = new CaseSettings().Of(TestFleet.Registration(), out _)!;
        var ledger = new BatchLedger(new OverloadMonitor(settings));
        var alarms = new List<AlarmId>();
        foreach (TelemetryBatch batch in batches)
        {
            ledger.Offer(batch);
            alarms.AddRange(ledger.Outbox.Select(a => new AlarmId(name, a.Sequence, a.Index)));
            ledger.Told(ledger.Outbox.Count);
        }

        return (ledger.Save(StateFormat.Packed), [.. alarms]);
    }
}
