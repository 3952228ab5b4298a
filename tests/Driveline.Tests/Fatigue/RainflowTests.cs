using Driveline.Fatigue;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Fatigue;

public class RainflowTests
{
    [Theory]
    [InlineData(new double[0])]
    [InlineData(new[] { 3.0 })]
    [InlineData(new[] { 3.0, 3.0, 3.0 })]
    public void Count_NoReversal_IsEmpty(double[] history)
    {
        Assert.Empty(Rainflow.Count(history));
        Assert.Empty(Rainflow.ClosedCycles(history, out _));
    }

    [Fact]
    public void Count_NotFinite_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Rainflow.Count([1, double.NaN, 2]));

    [Fact]
    public void Damage_OfTheStandardsExampleTimes50MPa_Worked()
    {
        // Half cycles of 150, 200, 400, 450, 400, 300 MPa and one of 200: Σ n (Δτ/100)^5 / 2e6, all above the cut-off of 45.7 MPa:
        // 0.5 · 7.59375 + 1.5 · 32 + 1.0 · 1024 + 0.5 · 1845.28125 + 0.5 · 243 = 2119.9375.
        double[] history = [-100, 50, -150, 250, -50, 150, -200, 200, -100];
        IReadOnlyList<RainflowCycle> cycles = Rainflow.Count([.. history.Select(v => v * 1e6)]);
        Close.Relative(2119.9375 / 2e6, Miner.Damage(SNCurve.BoltsInShear, cycles), 1e-12, "hand: fifth powers of the counted ranges");
    }

    [Fact]
    public void Count_IntoSpans_AllocatesNothing()
    {
        double[] history = [-2, 1, -3, 5, -1, 3, -4, 4, -2], open = new double[9];
        var cycles = new RainflowCycle[9];
        Rainflow.Count(history, cycles, open);
        long before = GC.GetAllocatedBytesForCurrentThread();
        int count = Rainflow.Count(history, cycles, open);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal([3, 4, 4, 8, 9, 8, 6], cycles.Take(count).Select(c => c.Range));   // the example of the docs, in the order they close
        Assert.Throws<ArgumentException>(() => Rainflow.Count(history, cycles.AsSpan(1), open));
        Assert.Throws<ArgumentException>(() => Rainflow.Count(history, cycles, open.AsSpan(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Rainflow.Count([1, 1, double.NaN], cycles, open));
    }

    // The largest range of a history is always counted, once in full or as halves.
    [Law]
    public Property Count_LargestRange_IsAlwaysThere() => Prop.ForAll(Histories(), history =>
    {
        IReadOnlyList<RainflowCycle> cycles = Rainflow.Count(history);
        double span = history.Max() - history.Min();
        return span == 0 ? cycles.Count == 0 : cycles.Max(c => c.Range) == span;
    });

    // Half cycles counted twice over, the ranges add up to the path walked between reversals.
    [Law]
    public Property Count_SumOfRanges_IsThePathWalked() => Prop.ForAll(Histories(), history =>
    {
        double path = history.Zip(history.Skip(1), (a, b) => Math.Abs(b - a)).Sum();
        return Math.Abs(Rainflow.Count(history).Sum(c => 2 * c.Count * c.Range) - path) < 1e-9;
    });

    [Law]
    public Property Count_RepeatedPoints_ChangeNothing() => Prop.ForAll(Histories(), history =>
        Rainflow.Count(history).SequenceEqual(Rainflow.Count([.. history.SelectMany(v => new[] { v, v })])));

    private static Arbitrary<double[]> Histories() =>
        Gen.Choose(-20, 20).Select(i => (double)i).ArrayOf().Where(a => a.Length > 0).ToArbitrary();
}
