using BenchmarkDotNet.Attributes;
using Driveline.ShearBolts;

namespace Driveline.Benchmarks.ShearBolts;

/// <summary>
/// Break torque over a span against a loop on doubles written by hand. The batch calls the kernel with the empty step recorder.
/// </summary>
[MemoryDiagnoser]
public class BreakTorqueBenchmarks
{
    private const int Planes = 2;
    private readonly double[] areaM2 = new double[10_000];
    private readonly double[] tauPa = new double[10_000];
    private readonly double[] radiusM = new double[10_000];
    private readonly double[] torqueNm = new double[10_000];

    public BreakTorqueBenchmarks()
    {
        var random = new Random(1);
        for (int k = 0; k < areaM2.Length; k++)
        {
            areaM2[k] = 20e-6 + (200e-6 * random.NextDouble());
            tauPa[k] = 200e6 + (500e6 * random.NextDouble());
            radiusM[k] = 0.01 + (0.05 * random.NextDouble());
        }
    }

    [Benchmark(Baseline = true)]
    public double HandWrittenLoop_10k()
    {
        ReadOnlySpan<double> area = areaM2, tau = tauPa, radius = radiusM;
        Span<double> torque = torqueNm;
        for (int k = 0; k < torque.Length; k++)
        {
            torque[k] = Planes * area[k] * tau[k] * radius[k];
        }

        return torque[^1];
    }

    [Benchmark]
    public double SpanBatch_10k()
    {
        BreakTorque.NewtonMeters(Planes, areaM2, tauPa, radiusM, torqueNm);
        return torqueNm[^1];
    }
}
