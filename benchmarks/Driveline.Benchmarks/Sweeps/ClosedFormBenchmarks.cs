using System.Numerics;
using System.Runtime.InteropServices;
using BenchmarkDotNet.Attributes;
using Driveline.Sweeps;
using Driveline.Sweeps.Sampling;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>Closed-form rows against loops written by hand, over columns that fit the cache and columns that do not.</summary>
[MemoryDiagnoser]
public class ClosedFormBenchmarks
{
    public const int Rows = 65_536;

    private readonly double[][] columns = [new double[Rows], new double[Rows], new double[Rows]];
    private readonly double[] torque = new double[Rows];
    private readonly ColumnOutput output = ClosedForm.BreakTorque(2, 0, 1, 2);
    private readonly StudyColumns study;
    private readonly SobolDimension[] dimensions = [.. Enumerable.Range(0, 8).Select(d => SobolPoints.Dimension(d, 7))];
    private readonly double[][] points = [.. Enumerable.Range(0, 8).Select(_ => new double[Rows])];

    public ClosedFormBenchmarks()
    {
        new RandomPoints(3, Rows, 1).Fill(0, Rows, columns);
        study = new StudyColumns(columns, Rows);
    }

    [Benchmark(Baseline = true)]
    public double HandWrittenSimd_64k()
    {
        ref double a = ref MemoryMarshal.GetArrayDataReference(columns[0]);
        ref double b = ref MemoryMarshal.GetArrayDataReference(columns[1]);
        ref double c = ref MemoryMarshal.GetArrayDataReference(columns[2]);
        ref double into = ref MemoryMarshal.GetArrayDataReference(torque);
        var planes = new Vector<double>(2);
        for (nuint k = 0; k < Rows; k += (nuint)Vector<double>.Count)
        {
            (planes * Vector.LoadUnsafe(ref a, k) * Vector.LoadUnsafe(ref b, k) * Vector.LoadUnsafe(ref c, k)).StoreUnsafe(ref into, k);
        }

        return torque[Rows / 2];
    }

    [Benchmark]
    public double ColumnOutput_64k()
    {
        output(study, torque);
        return torque[Rows / 2];
    }

    /// <summary>As many bytes as eight dimensions of points, stored by four vectors at a time and nothing else.</summary>
    [Benchmark]
    public double PlainStore_64k()
    {
        nuint width = (nuint)Vector<double>.Count;
        foreach (double[] column in points)
        {
            var value = new Vector<double>(column[0] + 1);
            ref double into = ref MemoryMarshal.GetArrayDataReference(column);
            for (nuint k = 0; k < Rows; k += 4 * width)
            {
                value.StoreUnsafe(ref into, k);
                value.StoreUnsafe(ref into, k + width);
                value.StoreUnsafe(ref into, k + (2 * width));
                value.StoreUnsafe(ref into, k + (3 * width));
            }
        }

        return points[7][Rows / 2];
    }

    [Benchmark]
    public double SobolPoints_64k()
    {
        for (int d = 0; d < points.Length; d++)
        {
            dimensions[d].Fill(0, points[d]);
        }

        return points[7][Rows / 2];
    }
}
