using BenchmarkDotNet.Attributes;
using Driveline.Fatigue;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Benchmarks.Monitoring;

/// <summary>Rainflow counting of ten thousand torques against counters written by hand.</summary>
[MemoryDiagnoser]
public class RainflowBenchmarks
{
    private const int Length = 10_000;
    private const double FullScaleNm = 4000;

    private readonly double[] history = new double[Length];
    private readonly double[] stack = new double[Length];
    private readonly double[] ranges = new double[Length];
    private readonly double[] means = new double[Length];
    private readonly double[] counts = new double[Length];
    private readonly RainflowCycle[] cycles = new RainflowCycle[Length];
    private readonly int[] classes = new int[Length];
    private readonly long[] table = new long[1025];
    private readonly RainflowStream stream = new(
        MonitorSettings.Of(Torque.FromNewtonMeters(FullScaleNm / 4), Duration.FromMilliseconds(10)));

    public RainflowBenchmarks()
    {
        var random = new Random(2);
        double nm = 300;
        for (int k = 0; k < Length; k++)
        {
            nm = (0.9 * nm) + (random.NextDouble() * 100) + (random.Next(50) == 0 ? 700 : 0);
            history[k] = nm;
        }
    }

    [Benchmark(Baseline = true)]
    public int HandWritten_10k() => HandWrittenRainflow.Count(history, stack, ranges, means, counts);

    [Benchmark]
    public int SpanCount_10k() => Rainflow.Count(history, cycles, stack);

    [Benchmark]
    public int HandWrittenInClasses_10k() => HandWrittenRainflow.InClasses(history, FullScaleNm / 256, classes, table);

    [Benchmark]
    public double Stream_10k()
    {
        foreach (double nm in history)
        {
            stream.Add(nm);
        }

        return stream.Clipped;
    }
}
