using BenchmarkDotNet.Attributes;
using Driveline.Clutches;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Benchmarks.Monitoring;

/// <summary>A monitor over ten thousand samples against the least that tells the same, as a plain loop.</summary>
[MemoryDiagnoser]
public class OverloadMonitorBenchmarks
{
    private const int Count = 10_000;

    // Cooled as much as the slips need: without it the heat piles up from run to run, and the faces are too hot for ever.
    private static readonly HeatPath Path = HeatPath
        .Of(Area.FromSquareMeters(0.012), 2, ThermalMaterials.HighCarbonCastIron, Length.FromMillimeters(4),
            ThermalMaterials.OrganicLiningWorn)
        .WithCooling(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(40), Area.FromSquareMeters(0.25));

    private readonly TorqueSample[] samples = new TorqueSample[Count];
    private readonly MonitorEvent[] events = new MonitorEvent[256];
    private readonly byte[] bytes = new byte[OverloadMonitor.LargestSnapshotBytes];
    private readonly MonitorSettings settings = MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromMilliseconds(10)).WithClutch(
        Path,
        Facings.MouldedLining,
        Temperature.FromDegreesCelsius(30));

    private readonly PlainMonitor plain = new(Path);
    private readonly OverloadMonitor monitor;

    public OverloadMonitorBenchmarks()
    {
        var random = new Random(1);
        for (int k = 0; k < Count; k++)
        {
            bool slips = k % 500 is > 100 and < 130;
            samples[k] = new TorqueSample(k * 0.01, 56, slips ? 20 : 56, 300 + (900 * random.NextDouble() * random.NextDouble()));
        }

        monitor = new OverloadMonitor(settings);
    }

    [Benchmark(Baseline = true)]
    public double PlainLoop_10k() => plain.Run(samples);

    [Benchmark]
    public int Monitor_10k() => Feed(monitor);

    /// <summary>Events of a first pass: those of the loop, and those of the monitor.</summary>
    public (int Loop, int Monitor) EventsOfOnePass()
    {
        var loop = new PlainMonitor(Path);
        loop.Run(samples);
        return (loop.Events, Feed(new OverloadMonitor(settings)));
    }

    private int Feed(OverloadMonitor monitor)
    {
        monitor.RestartClock();
        int written = 0;
        ReadOnlySpan<TorqueSample> rest = samples;
        while (rest.Length > 0)
        {
            FeedResult result = monitor.Feed(rest, events);
            rest = rest[result.SamplesTaken..];
            written += result.EventsWritten;
        }

        return written;
    }

    [Benchmark]
    public int Snapshot() => monitor.Save(bytes);
}
