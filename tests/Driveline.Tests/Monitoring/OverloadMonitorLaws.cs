using Driveline.Clutches;
using Driveline.Fatigue;
using Driveline.Monitoring;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Tests.Clutches;
using FsCheck.Xunit;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

[Properties(Arbitrary = [typeof(Shares)], MaxTest = 60)]
public class OverloadMonitorLaws
{
    [Law]
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

    [Law]
    public void Feed_InRuns_TellsWhatOneByOneTells(int seed, bool quieter)
    {
        TorqueSample[] samples = [.. Streams.Work(seed, 1500).Concat(Quiet(seed, quieter ? 3000 : 20))];
        var runs = new OverloadMonitor(Streams.Settings());
        var single = new OverloadMonitor(Streams.Settings()) { TakesRuns = false };
        Assert.Equal(Streams.Feed(single, samples), Streams.Feed(runs, samples));
        Assert.Equal(Streams.Told(single), Streams.Told(runs));
    }

    [Law]
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

    // A batch that is sent again, however long, changes nothing but the counts of what was left out.
    [Law]
    public void Feed_BatchesSentTwice_TellsWhatOnePassTells(int seed, Share part)
    {
        TorqueSample[] samples = Streams.Work(seed, 1500);
        var once = new OverloadMonitor(Streams.Settings());
        List<MonitorEvent> expected = Streams.Feed(once, samples);

        var random = new Random(seed ^ 91);
        int longest = part.Count(1, 700);
        var twice = new OverloadMonitor(Streams.Settings());
        var seen = new List<MonitorEvent>();
        for (int at = 0, length; at < samples.Length; at += length)
        {
            length = Math.Min(samples.Length - at, random.Next(1, longest + 1));
            twice.Feed(samples.AsSpan(at, length), seen);
            int before = random.Next(0, at + 1);
            twice.Feed(samples.AsSpan(before, at + length - before), seen);
        }

        Assert.Equal(expected, seen);
        Assert.Equal(once.CountedRanges().Select(r => (r.Range.NewtonMeters, r.Cycles)), twice.CountedRanges().Select(r =>
            (r.Range.NewtonMeters, r.Cycles)));
        Assert.Equal(once.Counts.Taken, twice.Counts.Taken);
        Assert.Equal(once.Counts.Missing, twice.Counts.Missing);
        Assert.Equal(once.History.HighestFaceTemperature!.Value.Kelvins, twice.History.HighestFaceTemperature!.Value.Kelvins);
        Assert.Equal(once.LearnWorkPeak(Hour).Torque?.SiBand, twice.LearnWorkPeak(Hour).Torque?.SiBand);
    }

    // 60 MPa for 1000 N·m on category 100: ranges below the cut-off of 45.7 MPa are among them.
    [Law]
    public void Damage_WithMoreSamples_NeverFalls(int seed)
    {
        FatigueDetail detail = FatigueDetail.Of("weld", SNCurve.BoltsInShear, Pressure.FromMegapascals(60),
            Torque.FromNewtonMeters(1000), Basis.Given("test"));
        var monitor = new OverloadMonitor(Streams.Settings());
        var before = new Band(0, 0, 0);
        foreach (TorqueSample sample in Streams.Work(seed, 400))
        {
            Streams.Feed(monitor, [sample]);
            Band now = monitor.ConsumedLife(detail).Damage.SiBand;
            Assert.True(now.Low >= before.Low * (1 - 1e-12), "low " + before.Low + " to " + now.Low);
            Assert.True(now.Expected >= before.Expected * (1 - 1e-12), "expected " + before.Expected + " to " + now.Expected);
            Assert.True(now.High >= before.High * (1 - 1e-12), "high " + before.High + " to " + now.High);
            before = now;
        }
    }

    // All heat of the slips stays in the plates, and the face stands above their mean by at most that of the highest flux, q·L/(3·k):
    // the insulated plate under a constant flux, H. S. Carslaw, J. C. Jaeger, Conduction of Heat in Solids, 2nd ed., 3.8 (3).
    [Law]
    public void Face_UnderAnySlips_StaysUnderTheAdiabaticBound(int seed)
    {
        TorqueSample[] samples = Streams.Work(seed, 1500);
        var monitor = new OverloadMonitor(Streams.Settings());
        Streams.Feed(monitor, samples);
        HeatPath path = Streams.Path();
        double mean = path.PlateShare * monitor.History.SlipEnergy!.Value.Joules / path.CapacityJPerK;
        double highestW = samples.Max(s => Math.Abs(s.SpeedInRadPerS) <= 56 && Math.Abs(s.TorqueNm) < 1e7 ? 56 * s.TorqueNm : 0);
        double over = path.PlateShare * highestW / (path.Faces * path.AreaM2) * path.ThicknessM / (3 * path.Plate.WPerMK);
        Assert.InRange(monitor.History.HighestFaceTemperature!.Value.Kelvins, 303.15, 303.15 + ((mean + over) * (1 + 1e-9)));
    }

    [Law]
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
    [Law]
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
    [Law]
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

    // Half a minute of work after a start, with peaks over 600 N·m, a few overloads, and a slip now and then.
    private static IEnumerable<TorqueSample> Quiet(int seed, int count)
    {
        var random = new Random(seed ^ 5);
        for (int k = 0; k < count; k++)
        {
            double slip = k % 700 is > 500 and < 520 ? 20 * random.NextDouble() : 0;
            double nm = 300 + (k % 900 < 500 ? 750 * random.NextDouble() * random.NextDouble() : 0);
            yield return new TorqueSample(1e5 + (k * 0.01), k < 3 ? 0 : 56, k < 3 ? 0 : 56 - slip, nm);
        }
    }

    private static Duration Hour => Duration.FromHours(1);

    private static MonitorSettings Bare(double factor) =>
        MonitorSettings.Of(Torque.FromNewtonMeters(1024 * factor), Duration.FromSeconds(0.01));
}
