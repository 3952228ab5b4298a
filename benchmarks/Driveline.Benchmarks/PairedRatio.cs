using System.Diagnostics;

namespace Driveline.Benchmarks;

/// <summary>The time of one method over that of another, timed by turns: the median with a 95 % interval by order statistics.</summary>
/// <param name="Median">Median of the ratios.</param>
/// <param name="Low">Low end of its interval.</param>
/// <param name="High">High end of its interval.</param>
/// <param name="Nanoseconds">Median time of the method.</param>
/// <param name="Sink">What the methods gave; no more than a proof that they ran.</param>
internal readonly record struct PairedRatio(double Median, double Low, double High, double Nanoseconds, double Sink)
{
    private const int Pairs = 201;

    /// <summary>The ratio of the times that two methods take in this process.</summary>
    public static PairedRatio Of(Func<double> baseline, Func<double> tried, int inner)
    {
        double sink = 0;
        long begun = Stopwatch.GetTimestamp();
        for (int k = 0; k < 200 * inner || Stopwatch.GetElapsedTime(begun).TotalSeconds < 1.5; k++)
        {
            sink += baseline() + tried();
        }

        PairedRatio found = OfTimes(() => Time(baseline, inner, ref sink), () => Time(tried, inner, ref sink), Pairs);
        return found with { Sink = sink };
    }

    /// <summary>The ratio of two times, which somebody else takes.</summary>
    public static PairedRatio OfTimes(Func<double> baseline, Func<double> tried, int pairs)
    {
        var ratios = new double[pairs];
        var nanoseconds = new double[pairs];
        for (int pair = 0; pair < pairs; pair++)
        {
            double first = baseline();
            nanoseconds[pair] = tried();
            ratios[pair] = nanoseconds[pair] / first;
        }

        Array.Sort(ratios);
        Array.Sort(nanoseconds);
        int middle = pairs / 2;
        int half = (int)Math.Ceiling(0.98 * Math.Sqrt(pairs));
        return new PairedRatio(ratios[middle], ratios[middle - half], ratios[middle + half], nanoseconds[middle], 0);
    }

    /// <summary>Nanoseconds a call.</summary>
    public static double Time(Func<double> method, int inner, ref double sink)
    {
        long start = Stopwatch.GetTimestamp();
        for (int k = 0; k < inner; k++)
        {
            sink += method();
        }

        return Stopwatch.GetElapsedTime(start).TotalNanoseconds / inner;
    }
}
