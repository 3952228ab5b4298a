using System.Globalization;
using Driveline.Fatigue;

namespace Driveline.Tests.Fatigue;

public class RainflowPublished
{
    private static readonly IReadOnlyList<ReferenceRow> Rows = ReferenceTable.Read("clutch", "rainflow.csv");

    // ASTM E1049-85 Fig. 6: the cycles one by one, and their table of ranges.
    [Fact]
    public void Count_StandardsExample_GivesTheStandardsCycles()
    {
        ReferenceRow[] rows = [.. Rows.Where(r => r["id"] == "R1")];
        Close.Cite(rows[0]["source"]);
        Assert.Equal(7, rows.Length);
        IReadOnlyList<RainflowCycle> cycles = Rainflow.Count(History(rows[0]));
        Assert.Equal(rows.Length, cycles.Count);
        Assert.All(rows.Zip(cycles), pair =>
        {
            Close.Absolute(pair.First.Number("range"), pair.Second.Range, 1e-12, pair.First.ToString());
            Close.Absolute(pair.First.Number("mean"), pair.Second.Mean, 1e-12, pair.First.ToString());
            Assert.Equal(pair.First.Number("cycles"), pair.Second.Count);
        });
    }

    [Theory]
    [InlineData("R1sum")]
    [InlineData("R4")]
    public void Count_StandardsExample_GivesTheStandardsTable(string id)
    {
        ReferenceRow[] rows = [.. Rows.Where(r => r["id"] == id)];
        Close.Cite(rows[0]["source"]);
        IReadOnlyList<RainflowCycle> cycles = Rainflow.Count(History(rows[0]));
        Assert.All(rows, row => Close.Absolute(
            row.Number("cycles"), cycles.Where(c => c.Range == row.Number("range")).Sum(c => c.Count), 1e-12, row.ToString()));
        Close.Absolute(rows.Sum(r => r.Number("cycles")), cycles.Sum(c => c.Count), 1e-12, "nothing else is counted, " + id);
    }

    [Fact]
    public void Count_SumOfTwoSines_GivesTheLibrarysCycles()
    {
        ReferenceRow[] rows = [.. Rows.Where(r => r["id"] == "R7")];
        Close.Cite(rows[0]["source"]);
        double[] history =
            [.. Enumerable.Range(0, 1001).Select(i => (0.8 * Math.Sin(0.01 * Math.PI * i)) + (0.2 * Math.Sin(0.032 * Math.PI * i)))];
        IReadOnlyList<RainflowCycle> cycles = Rainflow.Count(history);
        Assert.All(rows, row => Assert.Contains(
            cycles,
            c => Math.Abs(c.Range - row.Number("range")) < 1e-8 && Math.Abs(c.Mean - row.Number("mean")) < 1e-6
                && c.Count == row.Number("cycles")));
        Assert.Equal(rows.Length, cycles.Count);
    }

    [Theory]
    [InlineData("R5")]
    [InlineData("R6")]
    public void ClosedCycles_PublicTestData_Matches(string id)
    {
        ReferenceRow[] rows = [.. Rows.Where(r => r["id"] == id)];
        Close.Cite(rows[0]["source"]);
        IReadOnlyList<RainflowCycle> cycles = Rainflow.ClosedCycles(History(rows[0]), out IReadOnlyList<double> residue);
        Assert.Equal(rows.Select(r => r.Number("range")), cycles.Select(c => c.Range));
        Assert.Equal(rows.Select(r => r.Number("mean")), cycles.Select(c => c.Mean));
        Assert.Equal(id == "R5" ? [-2, 1, -3, 5, -4, 4, -2] : new double[] { 4, 7, 2, 12, 1, 9, 4, 6 }, residue);
    }

    [Fact]
    public void ClosedCycles_ResidueTwice_ClosesWhatThePublicDataClose()
    {
        ReferenceRow[] rows = [.. Rows.Where(r => r["id"] == "R6res")];
        Close.Cite(rows[0]["source"]);
        double[] residue = History(rows[0]);
        IReadOnlyList<RainflowCycle> cycles = Rainflow.ClosedCycles([.. residue, .. residue], out _);
        Assert.Equal(rows.Select(r => r.Number("range")).Order(), cycles.Select(c => c.Range).Order());
    }

    private static double[] History(ReferenceRow row) =>
        [.. row["history"].Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
}
