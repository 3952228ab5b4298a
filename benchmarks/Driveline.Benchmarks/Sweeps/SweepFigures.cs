using System.Globalization;
using Driveline.Sweeps;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>Prints what studies cost: paired ratios of kernels, rows a second, the memory of a long one.</summary>
internal static class SweepFigures
{
    public static void Kernels(Action<string, Func<double>, Func<double>, int> compare, Action<string, Action> processor)
    {
        var closed = new ClosedFormBenchmarks();
        compare("closed form, 64k rows: column output over hand-written SIMD loop", closed.HandWrittenSimd_64k, closed.ColumnOutput_64k, 5);
        compare("Sobol, 64k points of 8 dimensions: points over a plain store", closed.PlainStore_64k, closed.SobolPoints_64k, 1);
        var typed = new TypedRows();
        compare("typed assessment: changed parts over build and run", typed.BuildAndRun, typed.ChangedAndRun, 200);
        processor("typed assessment, built and run", () => typed.BuildAndRun());
        processor("typed assessment, changed parts and run", () => typed.ChangedAndRun());
        var rows = new ComputedRows();
        compare("closed-form rows, 64k: sampled and computed over the hand-written loop", closed.HandWrittenSimd_64k, rows.Compute, 1);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"closed-form rows: {rows.NanosecondsARow():F3} ns a row sampled and computed (NumPy: benchmarks/closed_form.py)"));
    }

    /// <summary>50 million rows of closed form into a Parquet file, and the most memory the process took.</summary>
    public static void Long(string folder)
    {
        string path = Path.Combine(folder, "long.parquet");
        StudyResult result = Sweep.RunTo(StudyBenchmarks.ClosedFormOf(50_000_000), path);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"50,000,000 rows: {result.Elapsed.TotalSeconds:F1} s, {result.Rows / result.Elapsed.TotalSeconds / 1e6:F2} million rows/s, ")
            + string.Create(CultureInfo.InvariantCulture,
                $"{Environment.WorkingSet >> 20} MiB now, "
                + $"{System.Diagnostics.Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB at most"));
        File.Delete(path);
        Environment.ExitCode = System.Diagnostics.Process.GetCurrentProcess().PeakWorkingSet64 > 300L << 20 ? 1 : 0;
    }
}
