using Driveline.Monitoring;
using Driveline.Tests.Clutches;
using FsCheck.Xunit;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

[Properties(Arbitrary = [typeof(Shares)], MaxTest = 60)]
public class OverloadMonitorLaws
{
    [Property]
    public void Feed_InOtherChunks_GivesTheSameEvents(int seed, Share room)
    {
        TorqueSample[] samples = Streams.Work(seed, 1500);
        var whole = new OverloadMonitor(Streams.Settings());
        List<MonitorEvent> expected = Streams.Feed(whole, samples);

        var random = new Random(seed ^ 77);
        var parts = new OverloadMonitor(Streams.Settings());
        var seen = new List<MonitorEvent>();
        var space = new MonitorEvent[room.Count(OverloadMonitor.MostEventsPerSample, 40)];
        for (int at = 0; at < samples.Length;)
        {
            int length = Math.Min(samples.Length - at, random.Next(1, 200));
            FeedResult result = parts.Feed(samples.AsSpan(at, length), space);
            seen.AddRange(space.AsSpan(0, result.EventsWritten));
            at += result.SamplesTaken;
        }

        Assert.Equal(expected, seen);
        Assert.Equal(Streams.Told(whole), Streams.Told(parts));
        Assert.NotEmpty(expected);
    }

    [Property]
    public void Snapshot_AtAnyPoint_GivesTheSameLaterOutput(int seed, Share point)
    {
        TorqueSample[] samples = Streams.Work(seed, 1500);
        int cut = point.Count(0, samples.Length);
        var first = new OverloadMonitor(Streams.Settings());
        Streams.Feed(first, samples.AsSpan(0, cut));
        OverloadMonitor second = OverloadMonitor.Restore(Streams.Settings(), first.Save());
        Assert.Equal(Streams.Feed(first, samples.AsSpan(cut)), Streams.Feed(second, samples.AsSpan(cut)));
        Assert.Equal(Streams.Told(first), Streams.Told(second));
    }

    [Property]
    public void Slip_UnderConstantTorque_MakesTorqueTimesAngle(int seed, Share torque)
    {
        double nm = torque.Log(1, 5000);
        TorqueSample[] samples =
        [
            .. Streams.Work(seed, 1000).Select(s => new TorqueSample(s.TimeS, s.SpeedInRadPerS, s.SpeedOutRadPerS, nm)),
        ];
        var monitor = new OverloadMonitor(Streams.Settings());
        MonitorEvent[] slips = [.. Streams.Feed(monitor, samples).Where(e => e.Kind == MonitorEventKind.Slip)];
        Assert.All(slips, s =>
            Close.Absolute(nm * s.SlipAngleRad, s.EnergyJ, 1e-9 * nm * (1 + s.SlipAngleRad), "law: heat = torque · angle"));
        MonitorHistory history = monitor.History;
        Close.Relative(nm * history.SlipAngle!.Value.Radians, history.SlipEnergy!.Value.Joules, 1e-9, "law: heat = torque · angle");
    }

    // A power of two scales every double exactly: the same events at the same times, with torques and heat so many times as high.
    [Property]
    public void Torques_ScaledWithTheLevels_ScaleTheEvents(int seed, Share power)
    {
        double factor = Math.Pow(2, power.Count(-3, 3));
        TorqueSample[] samples = Streams.Work(seed, 1000);
        TorqueSample[] scaled = [.. samples.Select(s =>
            new TorqueSample(s.TimeS, s.SpeedInRadPerS, s.SpeedOutRadPerS, factor * s.TorqueNm))];
        List<MonitorEvent> plain = Streams.Feed(new OverloadMonitor(Bare(1)), samples);
        List<MonitorEvent> times = Streams.Feed(new OverloadMonitor(Bare(factor)), scaled);
        Assert.Equal(
            plain.Select(e => (e.Kind, e.StartS, e.DurationS, e.PeakNm * factor, e.EnergyJ * factor)),
            times.Select(e => (e.Kind, e.StartS, e.DurationS, e.PeakNm, e.EnergyJ)));
    }

    // A higher level can only shorten what stands above it.
    [Property]
    public void Overloads_OfAHigherLevel_LastNoLonger(int seed, Share higher)
    {
        TorqueSample[] samples = Streams.Work(seed, 1000);
        double low = Seconds(1000), high = Seconds(1000 * higher.Log(1, 4));
        Assert.True(high <= low * (1 + 1e-12));

        double Seconds(double level) => Streams
            .Feed(new OverloadMonitor(Level(level)), samples).Where(e => e.Kind == MonitorEventKind.Overload).Sum(e => e.DurationS);

        static MonitorSettings Level(double nm) => MonitorSettings.Of(Torque.FromNewtonMeters(nm), Duration.FromSeconds(0.01))
            .WithOverloadUntil(Torque.FromNewtonMeters(nm));
    }

    private static MonitorSettings Bare(double factor) =>
        MonitorSettings.Of(Torque.FromNewtonMeters(1024 * factor), Duration.FromSeconds(0.01));
}
