using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using Driveline.Sweeps;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>
/// How many times as fast two threads are as one, by turns, beside what two threads that share nothing get of this machine and its memory.
/// Medians, with the middle half of the turns in brackets.
/// </summary>
internal static class ThreadFigures
{
    private const int Turns = 41;
    private const int Large = 1 << 23;

    public static void All()
    {
        // Runs of half a second, so that their threads count and not their start; many, since the host's neighbours come and go.
        var studies = new StudyBenchmarks();
        Study typed = studies.Cases(1 << 16);
        Study simulated = studies.Simulations(1 << 11);
        Study closed = StudyBenchmarks.ClosedFormOf(1 << 23);
        Study device = studies.OneDevice(1 << 23);
        double[][] columns = [.. Enumerable.Range(0, 8).Select(_ => new double[Large])];
        Print(
            "typed rows, assessed cases, 65,536", 1.8, threads => StudyBenchmarks.Seconds(typed, threads),
            "plain arithmetic", 0.9, Computed);
        Print("simulated rows, 2,048", 1.8, threads => StudyBenchmarks.Seconds(simulated, threads), "plain arithmetic", 0.9, Computed);
        Print(
            "closed-form rows, 2 times 8,388,608", null, threads => Repeated(2, closed, threads), "a = b * c over 64 MiB columns", 0.85,
            threads => Streamed(columns, threads));
        Print(
            "rows of a study file over columns, 2 times 8,388,608", null, threads => Repeated(2, device, threads),
            "a = b * c over 64 MiB columns", 0.85, threads => Streamed(columns, threads));
    }

    private static double Repeated(int times, Study study, int threads) =>
        Enumerable.Range(0, times).Sum(_ => StudyBenchmarks.Seconds(study, threads));

    // What this machine gives to two threads that share nothing is taken in the same turns: neighbours on its host change it by the second.
    private static void Print(
        string name, double? wanted, Func<int, double> seconds, string limitName, double share, Func<int, double> limit)
    {
        // Code that runs often is compiled anew beside it, which takes from the second thread what the figure is about.
        for (long start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start).TotalSeconds < 8;)
        {
            seconds(1);
            seconds(2);
        }

        double[] ratios = new double[Turns];
        double[] limits = new double[Turns];
        double[] busy = new double[Turns];
        double best = double.PositiveInfinity;
        for (int k = 0; k < Turns; k++)
        {
            double one = seconds(1);
            best = Math.Min(best, one);
            TimeSpan before = Environment.CpuUsage.TotalTime;
            double two = seconds(2);
            busy[k] = (Environment.CpuUsage.TotalTime - before).TotalSeconds / two;
            ratios[k] = one / two;
            limits[k] = limit(1) / limit(2);
        }

        Array.Sort(ratios);
        Array.Sort(limits);
        Array.Sort(busy);
        double median = ratios[Turns / 2];
        double ofMachine = limits[Turns / 2];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name}: best {best:F3} s on one thread; two are {median:F2} times as fast {Middle(ratios)}")
            + (wanted is { } least
                ? string.Create(CultureInfo.InvariantCulture, $" (at least {least:F1} wanted: {SweepFigures.Met(median >= least)})")
                : string.Empty));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  {median / ofMachine:F2} of what {limitName} has in the same turns, {ofMachine:F2} {Middle(limits)} ")
            + string.Create(
                CultureInfo.InvariantCulture,
                $"(at least {share:F2} wanted: {SweepFigures.Met(median / ofMachine >= share)}); processors busy {busy[Turns / 2]:F2}"));
    }

    private static string Middle(double[] sorted) =>
        string.Create(CultureInfo.InvariantCulture, $"[{sorted[Turns / 4]:F2}, {sorted[3 * Turns / 4]:F2}]");

    // Eight chains that do not wait for one another keep a core busy: two threads on one core, or neighbours on it, show in the factor.
    private static double Computed(int threads)
    {
        double[] sums = new double[16 * threads];
        return Elapsed(threads, t =>
        {
            double a = 1, b = 2, c = 3, d = 4;
            long e = 5, f = 6, g = 7, h = 8;
            for (int k = 0; k < 120_000_000 / threads; k++)
            {
                a = (a * 0.5) + 1;
                b = (b * 0.25) + 1;
                c = (c * 0.125) + 2;
                d = (d * 0.375) + 1;
                e += k ^ f;
                f ^= e >> 3;
                g += k;
                h ^= g;
            }

            sums[16 * t] = a + b + c + d + e + f + g + h;
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
