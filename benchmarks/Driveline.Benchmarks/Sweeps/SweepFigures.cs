using System.Diagnostics;
using Driveline.Sweeps;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>Prints what studies cost, each beside what is wanted of it: rates are rows a second over those of the other.</summary>
internal static class SweepFigures
{
    private const int NumPyPairs = 101;
    private const int NumPyCalls = 20;

    public static void Kernels(Action<string, Action> processor)
    {
        var closed = new ClosedFormBenchmarks();
        var computed = new ComputedRows();
        var typed = new TypedRows();
        Rate("closed form over columns, 64k rows: rate over that of a hand-written SIMD loop over the same columns", 0.85,
            PairedRatio.Of(closed.HandWrittenSimd_64k, closed.ColumnOutput_64k, 5));
        Rate("Sobol, 64k points of 8 dimensions: rate over that of a plain store of as many bytes by vectors", 0.8,
            PairedRatio.Of(closed.PlainStore_64k, closed.SobolPoints_64k, 1));
        PairedRatio rows = PairedRatio.Of(closed.HandWrittenSimd_64k, computed.Compute, 1);
        Say($"closed-form rows, 64k: time to sample three columns and compute, over the SIMD loop alone: {rows.Median:F3} ")
            .Line($"[{rows.Low:F3}, {rows.High:F3}], {rows.Nanoseconds / ClosedFormBenchmarks.Rows:F3} ns a row");
        NumPy(closed, computed);
        PairedRatio changed = PairedRatio.Of(typed.BuildAndRun, typed.ChangedAndRun, 200);
        Say($"typed assessment, a row of a study: time over that of build and run {changed.Median:F3} [{changed.Low:F3}, ")
            .Line($"{changed.High:F3}], {changed.Nanoseconds:F0} ns (at most 0.435 wanted, 2 of 4.6 µs: {Met(changed.Median <= 0.435)})");
        processor("typed assessment, built and run", () => typed.BuildAndRun());
        processor("typed assessment, changed parts and run", () => typed.ChangedAndRun());
    }

    /// <summary>50 million rows of closed form into a Parquet file, and the most memory the process took.</summary>
    public static void Long(string folder)
    {
        string path = Path.Combine(folder, "long.parquet");
        StudyResult result = Sweep.RunTo(StudyBenchmarks.ClosedFormOf(50_000_000), path);
        long most = Process.GetCurrentProcess().PeakWorkingSet64;
        Say($"50,000,000 rows: {result.Elapsed.TotalSeconds:F1} s, {result.Rows / result.Elapsed.TotalSeconds / 1e6:F2} million rows/s, ")
            .Line($"{Environment.WorkingSet >> 20} MiB now, {most >> 20} MiB at most (300 wanted: {Met(most <= 300L << 20)})");
        File.Delete(path);
        Environment.ExitCode = most > 300L << 20 ? 1 : 0;
    }

    /// <summary>"met" or "NOT MET".</summary>
    public static string Met(bool isMet) => isMet ? "met" : "NOT MET";

    // By turns too: ours, then NumPy's in its own process, while the machine is as it is.
    private static void NumPy(ClosedFormBenchmarks closed, ComputedRows computed)
    {
        using var numPy = NumPyRows.Start();
        if (numPy is null)
        {
            Console.WriteLine("NumPy is not here (apt-get install python3-numpy): closed-form rows are not compared with it");
            return;
        }

        double sink = 0;
        PairedRatio Against(string what, Func<double> ours) => PairedRatio.OfTimes(
            () => numPy.Nanoseconds(what, NumPyCalls), () => PairedRatio.Time(ours, NumPyCalls, ref sink), NumPyPairs);
        Rate("closed-form rows, 64k, sampled and computed: rate over NumPy's", 6, Against("sampled", computed.Compute));
        Rate("closed form over columns, 64k rows: rate over NumPy's", double.NaN, Against("torque", closed.ColumnOutput_64k));
    }

    // A rate is the other way round than a time.
    private static void Rate(string name, double wanted, PairedRatio time) =>
        Say($"{name}: {1 / time.Median:F3} [{1 / time.High:F3}, {1 / time.Low:F3}], {time.Nanoseconds:F0} ns")
            .Line(double.IsNaN(wanted) ? (FormattableString)$"" : $" (at least {wanted:G3} wanted: {Met(1 / time.Median >= wanted)})");

    private static string Say(FormattableString text) => FormattableString.Invariant(text);

    private static void Line(this string start, FormattableString rest) => Console.WriteLine(start + FormattableString.Invariant(rest));
}
