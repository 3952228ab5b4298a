using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

public class OverloadMonitorTests
{
    [Fact]
    public void Overload_BetweenSamples_BeginsAndEndsWhereTheLevelsAreCrossed()
    {
        // 800 → 1200 crosses 1000 at 1.5 s; 1200 → 700 crosses 900 after 300/500 of the step, at 2.6 s.
        MonitorEvent seen = Assert.Single(Run(Streams.Settings(1), T(0, 0), T(1, 800), T(2, 1200), T(3, 700), T(4, 100)));
        Assert.Equal(MonitorEventKind.Overload, seen.Kind);
        Close.Absolute(1.5, seen.StartS, 1e-12, "hand");
        Close.Absolute(1.1, seen.DurationS, 1e-12, "hand");
        Assert.Equal(1200, seen.PeakNm);
        Assert.False(seen.IsCut);
    }

    // 950 lies between the two levels: the episode goes on.
    [Theory]
    [InlineData(950, 1)]
    [InlineData(900, 1)]
    [InlineData(899.9, 2)]
    public void Overload_DipBetweenTheLevels_IsOneEpisode(double dipNm, int episodes) => Assert.Equal(
        episodes, Run(Streams.Settings(1), T(0, 0), T(1, 1100), T(2, dipNm), T(3, 1200), T(4, 0)).Count);

    [Theory]
    [InlineData(999.9, 0)]
    [InlineData(1000, 1)]
    public void Overload_AtItsLevel_Counts(double nm, int episodes) =>
        Assert.Equal(episodes, Run(Streams.Settings(1), T(0, 0), T(1, nm), T(2, 0)).Count);

    [Fact]
    public void Slip_OfConstantTorque_IsTorqueTimesAngle()
    {
        // Slip speed 0, 0, 20, 20, 0 rad/s at 0.1 s: (10 + 20 + 10) · 0.1 = 4 rad; 600 N·m · 4 rad = 2400 J.
        MonitorEvent seen = Assert.Single(Run(Streams.Settings(0.1), S(0, 50, 600), S(0.1, 50, 600), S(0.2, 30, 600),
            S(0.3, 30, 600), S(0.4, 50, 600)));
        Assert.Equal(MonitorEventKind.Slip, seen.Kind);
        Close.Absolute(0.1, seen.StartS, 1e-12, "hand");
        Close.Absolute(0.3, seen.DurationS, 1e-12, "hand");
        Close.Absolute(4, seen.SlipAngleRad, 1e-12, "hand");
        Close.Absolute(2400, seen.EnergyJ, 1e-9, "hand");
        Assert.True(seen.PeakFaceK > 303.15);
    }

    [Fact]
    public void Trip_SpeedsPartAndTorqueFalls_IsSeenOnceAndIsNoSlip()
    {
        MonitorEvent[] seen =
        [
            .. Run(Streams.Settings(), S(0, 50, 500), S(0.01, 50, 900), S(0.02, 10, 850), S(0.03, 0, 40), S(0.04, 0, 30), S(0.05, 0, 30)),
        ];
        MonitorEvent trip = Assert.Single(seen);
        Assert.Equal(MonitorEventKind.Trip, trip.Kind);
        Assert.Equal(900, trip.PeakNm);

        // Slip speed 0, 40, 50 rad/s: 0.2 + 0.45 rad; 875 N·m · 0.2 + 445 N·m · 0.45 = 375.25 J.
        Close.Absolute(0.65, trip.SlipAngleRad, 1e-12, "hand");
        Close.Absolute(375.25, trip.EnergyJ, 1e-9, "hand");
        Close.Absolute(0.01, trip.StartS, 1e-12, "hand");
        Close.Absolute(0.02, trip.DurationS, 1e-12, "hand");
    }

    // Speeds part under full torque: a clutch that slips through, not a device that let go.
    [Fact]
    public void Trip_TorqueStays_IsASlip() => Assert.Equal(
        MonitorEventKind.Slip,
        Assert.Single(Run(Streams.Settings(), S(0, 50, 600), S(0.01, 10, 600), S(0.02, 5, 600), S(0.03, 50, 600))).Kind);

    [Fact]
    public void SpeedOut_NeverMeasured_SlipsAndTripsAreNotKnown()
    {
        var monitor = new OverloadMonitor(Streams.Settings(1));
        Streams.Feed(monitor, [T(0, 0), T(1, 1100), T(2, 0)]);
        MonitorHistory history = monitor.History;
        Assert.Null(history.Trips);
        Assert.Null(history.Slips);
        Assert.Null(history.SlipEnergy);
        Assert.Null(history.HighestFaceTemperature);
        Assert.Equal(1, history.Overloads);
        Assert.Equal(3, monitor.Counts.WithoutSpeedOut);
    }

    [Fact]
    public void Engagement_FromRest_IsCountedWithItsPeakAndItsTime()
    {
        // Turns from 10 rad/s on, at 1 s; 5 s later it has been engaged.
        TorqueSample[] samples = [.. Enumerable.Range(0, 12).Select(k => new TorqueSample(k, k == 0 ? 0 : 50, 50, k == 2 ? 700 : 300))];
        var monitor = new OverloadMonitor(Streams.Settings(1));
        MonitorEvent seen = Assert.Single(Streams.Feed(monitor, samples));
        Assert.Equal(MonitorEventKind.Engagement, seen.Kind);
        Assert.Equal(700, seen.PeakNm);
        Close.Absolute(1, seen.StartS, 1e-12, "hand");
        Close.Absolute(5, seen.DurationS, 1e-12, "hand");
        Assert.Equal(1, monitor.History.Engagements);
        Close.Absolute(10, monitor.History.Turned.Seconds, 1e-9, "hand: 1 to 11 s");
        Close.Absolute(5, monitor.History.Worked.Seconds, 1e-9, "hand: 6 to 11 s");
    }

    [Fact]
    public void Samples_ThatAreWrong_AreCountedByReason()
    {
        var monitor = new OverloadMonitor(Streams.Settings(1));
        Streams.Feed(monitor,
        [
            T(0, 1), T(1, 1), T(1, 5), T(0.5, 5), T(double.NaN, 1), T(2, double.NaN),
                new TorqueSample(2, double.NegativeInfinity, 1), T(2, 1e8), T(5, 1), T(20, 1),
        ]);
        SampleCounts counts = monitor.Counts;
        Assert.Equal(4, counts.Taken);
        Assert.Equal(1, counts.Duplicate);
        Assert.Equal(1, counts.Late);
        Assert.Equal(3, counts.NotANumber);
        Assert.Equal(1, counts.OutOfRange);
        Assert.Equal(3 + 14, counts.Missing);   // between 1 and 5 s, and between 5 and 20 s
        Assert.Equal(1, counts.Gaps);           // 15 s are longer than the longest step of 5 s
    }

    [Fact]
    public void Pause_WhileOverloaded_EndsItAtTheLastSample()
    {
        List<MonitorEvent> events = Run(Streams.Settings(1), T(0, 0), T(1, 1100), T(2, 1100), T(60, 0));
        MonitorEvent seen = events[0];
        Assert.Equal([MonitorEventKind.Overload, MonitorEventKind.Gap], events.Select(e => e.Kind));
        Assert.Equal(2, events[1].StartS);
        Assert.Equal(58, events[1].DurationS);
        Assert.True(seen.IsCut);
        Close.Absolute(2 - (1000 / 1100.0), seen.DurationS, 1e-12, "hand: 1000 N·m are crossed at 1000/1100 s");
    }

    [Fact]
    public void Clock_GoneBack_LeavesOutWhatIsLate()
    {
        TorqueSample[] samples = [T(1000, 0), .. Enumerable.Range(0, 1500).Select(k => T(k, 1))];
        var monitor = new OverloadMonitor(Streams.Settings(1));
        Streams.Feed(monitor, samples);
        Assert.Equal(1000, monitor.Counts.Late);        // 0 to 999 s
        Assert.Equal(1, monitor.Counts.Duplicate);      // 1000 s
        Assert.Equal(500, monitor.Counts.Taken);        // 1000 s, and 1001 to 1499 s
    }

    [Fact]
    public void Clock_RestartedAsSaid_IsAGapAndGoesOn()
    {
        var monitor = new OverloadMonitor(Streams.Settings(1));
        Streams.Feed(monitor, [T(1000, 0), T(1001, 1100)]);
        monitor.RestartClock();
        MonitorEvent[] seen = [.. Streams.Feed(monitor, [T(0, 0), T(1, 0)])];
        Assert.Equal([MonitorEventKind.Overload, MonitorEventKind.Gap], seen.Select(e => e.Kind));
        Assert.Equal(1001, seen[1].StartS);
        Assert.Equal(double.NaN, seen[1].DurationS);
        Assert.Equal(4, monitor.Counts.Taken);
        Assert.Equal(1, monitor.Counts.ClockResets);
        Assert.Equal(0, monitor.Counts.Late);
    }

    [Fact]
    public void Feed_ManySamples_AllocatesNothing()
    {
        TorqueSample[] samples = Streams.Work(3, 20_000);
        var events = new MonitorEvent[64];
        var monitor = new OverloadMonitor(Streams.Settings());
        monitor.Feed(samples.AsSpan(0, 1000), events);
        int left = samples.Length;
        long before = GC.GetAllocatedBytesForCurrentThread();
        while (left > 0)
        {
            left -= monitor.Feed(samples.AsSpan(samples.Length - left), events).SamplesTaken;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Feed_TooLittleRoomForEvents_IsRefused()
    {
        var monitor = new OverloadMonitor(Streams.Settings());
        Assert.Throws<ArgumentException>(() => monitor.Feed([T(0, 0)], new MonitorEvent[OverloadMonitor.MostEventsPerSample - 1]));
    }

    [Fact]
    public void Finish_WhileOverloaded_WritesIt() =>
        Assert.True(Assert.Single(Run(Streams.Settings(1), finish: true, T(0, 0), T(1, 1100))).IsCut);

    // Turning when the first part of a log ends, and still turning when the next begins: nobody engaged it.
    [Fact]
    public void Finish_ThenMoreSamples_CountsNoEngagementNorGap()
    {
        var monitor = new OverloadMonitor(Streams.Settings(1));
        var events = new List<MonitorEvent>();
        monitor.Feed([new TorqueSample(0, 0, 0, 0), T(1, 100), T(2, 100)], events);
        monitor.Finish(events);
        monitor.Feed([T(3, 100), T(4, 100)], events);
        Assert.Equal(1, monitor.History.Engagements);
        Assert.Equal(MonitorEventKind.Engagement, Assert.Single(events).Kind);
        Assert.Equal(0, monitor.Counts.Gaps);
        Close.Absolute(2, monitor.History.Turned.Seconds, 1e-12, "hand: 1 to 2 s and 3 to 4 s");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(2e6)]
    public void Settings_BadLevel_AreRefused(double nm) => Assert.Throws<ArgumentOutOfRangeException>(
        () => MonitorSettings.Of(double.IsNaN(nm) ? default : Torque.FromNewtonMeters(nm), Duration.FromSeconds(0.01)));

    private static TorqueSample T(double timeS, double torqueNm) => new(timeS, 50, torqueNm);

    private static TorqueSample S(double timeS, double speedOut, double torqueNm) => new(timeS, 50, speedOut, torqueNm);

    private static List<MonitorEvent> Run(MonitorSettings settings, params TorqueSample[] samples) => Run(settings, false, samples);

    private static List<MonitorEvent> Run(MonitorSettings settings, bool finish, params TorqueSample[] samples)
    {
        var monitor = new OverloadMonitor(settings);
        List<MonitorEvent> events = Streams.Feed(monitor, samples);
        if (finish)
        {
            monitor.Finish(events);
        }

        return events;
    }
}
