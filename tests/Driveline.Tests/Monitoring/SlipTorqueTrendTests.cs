using Driveline.Monitoring;
using Driveline.Tests.Clutches;
using FsCheck.Xunit;

namespace Driveline.Tests.Monitoring;

[Properties(Arbitrary = [typeof(Shares)])]
public class SlipTorqueTrendTests
{
    // Documentation of the R package statpsych, function ci.theil (after Hollander and Wolfe 1999):
    // estimate 0.5, limits 0.3243243 and 0.75.
    [Fact]
    public void Trend_PublishedExample_Matches()
    {
        double[] y = [21, 4, 9, 12, 35, 18, 10, 22, 24, 1, 6, 8, 13, 16, 19];
        double[] x = [67, 28, 30, 28, 52, 40, 25, 37, 44, 10, 14, 20, 28, 40, 51];
        Assert.True(SlipTorqueTrend.TryOf(x, y, out SlipTorqueTrend? trend));
        Close.Absolute(0.5, trend!.NewtonMetersPerHour, 1e-12, "statpsych ci.theil");
        Close.Absolute(0.3243243, trend.LowNewtonMetersPerHour, 5e-8, "statpsych ci.theil");
        Close.Absolute(0.75, trend.HighNewtonMetersPerHour, 1e-12, "statpsych ci.theil");
    }

    [Fact]
    public void Trend_StraightLineWithOneOutlier_IsTheLine()
    {
        double[] hours = [.. Enumerable.Range(0, 12).Select(k => (double)k)];
        double[] torques = [.. hours.Select(h => 700 - (5 * h))];
        torques[4] = 60;
        Assert.True(SlipTorqueTrend.TryOf(hours, torques, out SlipTorqueTrend? trend));
        Close.Absolute(-5, trend!.NewtonMetersPerHour, 1e-12, "hand: 55 of 66 pairs lie on the line");
        Close.Absolute(645, trend.Now.NewtonMeters, 1e-9, "hand: 11 of 12 lie on 700 - 5 · h, at 11 h");
        Assert.Equal(MonitoringFindings.SlipTorqueFalls, Assert.Single(trend.Findings).Code);
    }

    [Law]
    public void Trend_UpsideDown_IsTheOpposite(int seed)
    {
        var random = new Random(seed);
        double[] hours = [.. Enumerable.Range(0, 20).Select(k => k + random.NextDouble())];
        double[] torques = [.. hours.Select(_ => 500 + (100 * random.NextDouble()))];
        Assert.True(SlipTorqueTrend.TryOf(hours, torques, out SlipTorqueTrend? one));
        Assert.True(SlipTorqueTrend.TryOf(hours, [.. torques.Select(t => 1100 - t)], out SlipTorqueTrend? other));
        Close.Absolute(one!.NewtonMetersPerHour, -other!.NewtonMetersPerHour, 1e-9, "law: mirrored");
        Assert.InRange(one.NewtonMetersPerHour, one.LowNewtonMetersPerHour, one.HighNewtonMetersPerHour);
    }

    [Fact]
    public void Trend_TooFewOrAtOneHour_IsNone()
    {
        Assert.False(SlipTorqueTrend.TryOf([1, 2, 3], [1, 2, 3], out _));
        Assert.False(SlipTorqueTrend.TryOf(new double[20], new double[20], out _));
        Assert.Throws<ArgumentException>(() => SlipTorqueTrend.TryOf([1], [1, 2], out _));
    }

    // Slips of 600, 590, 580 … N·m, one in each minute: 10 N·m a minute are 600 N·m/h.
    [Fact]
    public void Monitor_SlipsThatWeaken_ShowIt()
    {
        var monitor = new OverloadMonitor(Streams.Settings(1));
        var samples = new List<TorqueSample>();
        for (int t = 0; t < 60 * 30; t++)
        {
            samples.Add(new TorqueSample(t, 50, t % 60 is 10 or 11 ? 0 : 50, 600 - (10 * (t / 60))));
        }

        Streams.Feed(monitor, [.. samples]);
        SlipTorqueTrend trend = monitor.SlipTorqueTrend()!;
        Assert.Equal(30, trend.Slips);
        Close.Absolute(-600, trend.NewtonMetersPerHour, 1e-6, "hand");
        Close.Absolute(310, trend.Now.NewtonMeters, 1e-6, "hand: 600 - 29 · 10");
    }
}
