using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using Driveline.Sweeps;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>How many times as fast two threads are as one, by turns, beside what two threads get of the memory.</summary>
internal static class ThreadFigures
{
    private const int Turns = 7;
    private const int Large = 1 << 23;

    public static void All()
    {
        // Each run takes half a second or more on one thread, so that its threads count and not its start.
        var studies = new StudyBenchmarks();
        Study typed = studies.Cases(1 << 16);
        Study simulated = studies.Simulations(2048);
        Study closed = StudyBenchmarks.ClosedFormOf(1 << 23);
        Study device = studies.OneDevice(1 << 23);
        // What this machine gives to two threads that share nothing: no study can have more.
        Print("arithmetic alone, without memory", double.NaN, Computed);
        Print("typed rows, assessed cases, 65,536", 1.8, threads => StudyBenchmarks.Seconds(typed, threads));
        Print("simulated rows, 2,048", 1.8, threads => StudyBenchmarks.Seconds(simulated, threads));
        double rows = Print("closed-form rows, 4 times 8,388,608", double.NaN, threads => Times(4, closed, threads));
        double device8M = Print("rows of a study file over columns, 4 times 8,388,608", double.NaN, threads => Times(4, device, threads));
        double[][] columns = [.. Enumerable.Range(0, 8).Select(_ => new double[Large])];
        double memory = Print("memory, a = b * c over 64 MiB columns", double.NaN, threads => Streamed(columns, threads));
        Limit("closed-form rows", rows / memory);
        Limit("rows of a study file over columns", device8M / memory);
    }

    private static void Limit(string name, double share) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"{name}: {share:F2} of the two-thread memory limit (at least 0.85 wanted: {SweepFigures.Met(share >= 0.85)})"));

    private static double Times(int times, Study study, int threads) =>
        Enumerable.Range(0, times).Sum(_ => StudyBenchmarks.Seconds(study, threads));

    private static double Print(string name, double wanted, Func<int, double> seconds)
    {
        seconds(1);
        seconds(2);
        double[] ratios = new double[Turns];
        double best = double.PositiveInfinity;
        for (int k = 0; k < Turns; k++)
        {
            double one = seconds(1);
            ratios[k] = one / seconds(2);
            best = Math.Min(best, one);
        }

        Array.Sort(ratios);
        double median = ratios[Turns / 2];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name}: best {best:F3} s on one thread; two are {median:F2} times as fast [{ratios[0]:F2}, {ratios[^1]:F2}]")
            + (double.IsNaN(wanted) ? string.Empty
                : string.Create(CultureInfo.InvariantCulture, $" (at least {wanted:F1} wanted: {SweepFigures.Met(median >= wanted)})")));
        return median;
    }

    private static double Computed(int threads)
    {
        double[] sums = new double[16 * threads];
        return Elapsed(threads, t =>
        {
            double sum = 1;
            for (int k = 0; k < 100_000_000 / threads; k++)
            {
                sum = Math.Sqrt(sum + k);
            }

            sums[16 * t] = sum;
        });
    }

    // The same work on one thread, or halved between two, each with columns of its own.
    private static double Streamed(double[][] columns, int threads) => Elapsed(threads, t =>
    {
        double[] into = columns[4 * t];
        for (int round = 0; round < 32 / threads; round++)
        {
            Multiply(columns[(4 * t) + 1], columns[(4 * t) + 2], into);
        }
    });

    private static double Elapsed(int threads, Action<int> work)
    {
        long start = Stopwatch.GetTimestamp();
        Thread[] all = [.. Enumerable.Range(0, threads).Select(t => new Thread(() => work(t)))];
        Array.ForEach(all, t => t.Start());
        Array.ForEach(all, t => t.Join());
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    private static void Multiply(double[] a, double[] b, double[] into)
    {
        for (int k = 0; k < into.Length; k += Vector<double>.Count)
        {
            (new Vector<double>(a, k) * new Vector<double>(b, k)).CopyTo(into, k);
        }
    }
}
