using Driveline.Fatigue;

namespace Driveline.Tests.Fatigue;

public class MinerTests
{
    [Fact]
    public void Damage_TwoRanges_Adds() => Close.Absolute(
        0.1375, Miner.Damage(SNCurve.BoltsInShear, [200e6, 300e6], [1000, 1000]), 1e-9,
            "hand: 1000/62 500 + 1000/8230.4527 = 0.016 + 0.1215");

    [Fact]
    public void Damage_BelowTheCutOff_IsNone() => Assert.Equal(0, Miner.Damage(SNCurve.BoltsInShear, [45e6], [1e12]));

    [Fact]
    public void Damage_SpansOfDifferentLength_AreRefused()
    {
        var error = Assert.Throws<ArgumentException>(() => Miner.Damage(SNCurve.BoltsInShear, [1e8, 1e8], [1]));
        Assert.Contains("got 2 and 1", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(1e8, double.NaN)]
    public void Damage_BadValue_IsRefused(double pa, double cycles) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Miner.Damage(SNCurve.BoltsInShear, [pa], [cycles]));

    [Fact]
    public void Damage_ManyRanges_AllocatesNothing()
    {
        double[] ranges = new double[1000], cycles = new double[1000];
        Array.Fill(ranges, 1e8);
        Array.Fill(cycles, 1);
        Miner.Damage(SNCurve.BoltsInShear, ranges, cycles);
        long before = GC.GetAllocatedBytesForCurrentThread();
        double damage = Miner.Damage(SNCurve.BoltsInShear, ranges, cycles);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Close.Relative(5e-4, damage, 1e-9, "hand: 1000 / 2e6");
    }
}
