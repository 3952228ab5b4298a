using System.Globalization;
using Driveline.Fatigue;
using Driveline.Monitoring;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

/// <summary>The cycles a monitor counts as the samples come, against those of the standard.</summary>
public class MonitoredRainflowPublished
{
    // ASTM E1049-85 Fig. 6 (5.4.4) and Fig. 7 (5.4.5): the tables of ranges.
    [Theory]
    [InlineData("R1sum", false)]
    [InlineData("R4", true)]
    public void Ranges_OfTheStandardsExample_AreTheStandards(string id, bool closed)
    {
        ReferenceRow[] rows = [.. ReferenceTable.Read("clutch", "rainflow.csv").Where(r => r["id"] == id)];
        Close.Cite(rows[0]["source"]);
        double[] history = [.. rows[0]["history"].Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
        OverloadMonitor monitor = Fed(history);
        AssertTable(rows, closed ? monitor.CountedClosedHistory() : monitor.CountedRanges());
        AssertTable(rows, closed ? monitor.CountedRanges() : Fed(history).CountedRanges());
    }

    // The same history begun elsewhere: Fig. 6 as a repeating history is Fig. 7.
    [Fact]
    public void ClosedHistory_OfTheExampleBegunElsewhere_IsTheStandardsTable()
    {
        ReferenceRow[] rows = [.. ReferenceTable.Read("clutch", "rainflow.csv").Where(r => r["id"] == "R4")];
        Close.Cite(rows[0]["source"]);
        AssertTable(rows, Fed([-2, 1, -3, 5, -1, 3, -4, 4, -2]).CountedClosedHistory());
    }

    [Law]
    public Property Ranges_OfAnyHistory_AreThoseOfTheBatchCount() => Prop.ForAll(Histories(), history =>
    {
        Dictionary<double, double> batch = Rainflow.Count(history).GroupBy(c => c.Range).ToDictionary(g => g.Key, g => g.Sum(c => c.Count));
        return Table(Fed(history).CountedRanges()).OrderBy(p => p.Key).SequenceEqual(batch.OrderBy(p => p.Key));
    });

    [Law]
    public Property ClosedHistory_BegunElsewhere_IsTheSame() => Prop.ForAll(Histories(), history =>
    {
        Dictionary<double, double> expected = Table(Fed([.. history, history[0]]).CountedClosedHistory());
        return Enumerable.Range(1, history.Length - 1).All(k =>
            Table(Fed([.. history[k..], .. history[..k], history[k]]).CountedClosedHistory())
            .OrderBy(p => p.Key).SequenceEqual(expected.OrderBy(p => p.Key)));
    });

    [Law]
    public Property ClosedHistory_UpsideDown_IsTheSame() => Prop.ForAll(Histories(), history =>
        Table(Fed([.. history.Select(v => -v)]).CountedClosedHistory()).OrderBy(p => p.Key)
            .SequenceEqual(Table(Fed(history).CountedClosedHistory()).OrderBy(p => p.Key)));

    // A closed history goes up as far as it goes down, and every cycle walks its range twice.
    [Law]
    public Property ClosedHistory_SumOfRanges_IsThePathWalked() => Prop.ForAll(Histories(), history =>
    {
        double[] closed = [.. history, history[0]];
        double path = closed.Zip(closed.Skip(1), (a, b) => Math.Abs(b - a)).Sum();
        return Math.Abs(Fed(closed).CountedClosedHistory().Sum(r => 2 * r.Cycles * r.Range.NewtonMeters) - path) < 1e-9;
    });

    // Classes of 1 N·m: whole numbers are counted as they are.
    private static OverloadMonitor Fed(double[] history)
    {
        var monitor = new OverloadMonitor(
            MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(1)).WithScale(Torque.FromNewtonMeters(256)));
        Streams.Feed(monitor, [.. history.Select((nm, k) => new TorqueSample(k, 50, nm))]);
        return monitor;
    }

    private static Dictionary<double, double> Table(IReadOnlyList<TorqueRange> ranges) =>
        ranges.ToDictionary(r => r.Range.NewtonMeters, r => r.Cycles);

    private static void AssertTable(ReferenceRow[] rows, IReadOnlyList<TorqueRange> ranges)
    {
        Assert.All(rows, row => Close.Absolute(
            row.Number("cycles"), ranges.Where(r => r.Range.NewtonMeters == row.Number("range")).Sum(r => r.Cycles), 1e-12,
                row.ToString()));
        Close.Absolute(rows.Sum(r => r.Number("cycles")), ranges.Sum(r => r.Cycles), 1e-12, "nothing else is counted");
    }

    private static Arbitrary<double[]> Histories() =>
        Gen.Choose(-20, 20).Select(i => (double)i).ArrayOf().Where(a => a.Length > 0).ToArbitrary();
}
