using System.Numerics;
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
        double[] a = columns[0];
        double[] b = columns[1];
        double[] c = columns[2];
        var planes = new Vector<double>(2);
        for (int k = 0; k < a.Length; k += Vector<double>.Count)
        {
            (planes * new Vector<double>(a, k) * new Vector<double>(b, k) * new Vector<double>(c, k)).CopyTo(torque, k);
        }

        return torque[Rows / 2];
    }

    [Benchmark]
    public double ColumnOutput_64k()
    {
        output(study, torque);
        return torque[Rows / 2];
    }

    /// <summary>As many bytes as eight dimensions of points, stored and nothing else.</summary>
    [Benchmark]
    public double PlainStore_64k()
    {
        foreach (double[] column in points)
        {
            var value = new Vector<double>(column[0] + 1);
            for (int k = 0; k < column.Length; k += Vector<double>.Count)
            {
                value.CopyTo(column, k);
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
