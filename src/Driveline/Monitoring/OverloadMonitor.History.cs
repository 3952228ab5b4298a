namespace Driveline.Monitoring;

/// <content>What it has counted so far.</content>
public sealed partial class OverloadMonitor
{
    /// <summary>What came in.</summary>
    public SampleCounts Counts => new(gate);

    /// <summary>What the driveline did so far.</summary>
    public MonitorHistory History => new(
        gate, engagement, trips, slips, thermometer, overloads, highestNm);

    /// <summary>Load cycles so far, as ASTM E1049-85, 5.4.4: closed cycles, and every range still open as half a cycle.</summary>
    internal IReadOnlyList<TorqueRange> CountedRanges() => TorqueRange.ListOf(cycles.CountedWithHalves(), cycles.ClassNm);

    /// <summary>Load cycles if what was seen repeated itself without end, as ASTM E1049-85, 5.4.5: all of them closed.</summary>
    internal IReadOnlyList<TorqueRange> CountedClosedHistory() => TorqueRange.ListOf(cycles.CountedClosedHistory(), cycles.ClassNm);
}
