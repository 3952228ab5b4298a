using Driveline.Cases.Results;
using Driveline.Sweeps.Sampling;

namespace Driveline.Sweeps.Statistics;

/// <summary>First-order and total indices of one output by Jansen's estimators, with bootstrap intervals.</summary>
/// <remarks>
/// S_i = 1 − Σ (f(B) − f(A_B^i))² / (2 n V), S_Ti = Σ (f(A) − f(A_B^i))² / (2 n V), V the variance of f(A) and f(B) together
/// (M. J. W. Jansen, Comput. Phys. Commun. 117 (1999) 35-43; A. Saltelli et al., ibid. 181 (2010) 259-270, table 2). Intervals: 2.5 % and
/// 97.5 % points of 400 bootstrap samples of base points, drawn by a seed of their own.
/// </remarks>
internal static class VarianceIndices
{
    private const int Resamples = 400;
    private const ulong Seed = 20080601;

    /// <param name="values">The output of every row, k + 2 a base point: A, B, then A with each coordinate of B.</param>
    /// <param name="factors">Number of factors, k.</param>
    /// <param name="threads">How many threads draw the bootstrap samples; they change no bit.</param>
    /// <returns>A row a factor: first, low, high, total, low, high; null when the output is not always a number or does not vary.</returns>
    public static double[][]? Of(ReadOnlySpan<double> values, int factors, int threads)
    {
        int width = factors + 2;
        int points = values.Length / width;
        double mean = 0;
        for (int j = 0; j < points * width; j++)
        {
            if (!double.IsFinite(values[j]))
            {
                return null;
            }

            mean += (values[j] - mean) / (j + 1);
        }

        // Per base point: squares for V, then the two differences of each factor; sums of rows are sums of these.
        int terms = (2 * factors) + 2;
        double[] parts = new double[points * terms];
        for (int j = 0; j < points; j++)
        {
            ReadOnlySpan<double> row = values.Slice(j * width, width);
            double a = row[0] - mean;
            double b = row[1] - mean;
            Span<double> part = parts.AsSpan(j * terms, terms);
            part[0] = a + b;
            part[1] = (a * a) + (b * b);
            for (int i = 0; i < factors; i++)
            {
                double mixed = row[i + 2] - mean;
                part[(2 * i) + 2] = (b - mixed) * (b - mixed);
                part[(2 * i) + 3] = (a - mixed) * (a - mixed);
            }
        }

        double[] sums = new double[terms];
        for (int j = 0; j < points; j++)
        {
            Sum(sums, parts.AsSpan(j * terms, terms));
        }

        return Variance(sums, points) > 0 ? WithIntervals(parts, sums, points, factors, threads) : null;
    }

    /// <summary>The indices of an output of a study, as figures.</summary>
    public static IEnumerable<IndexFigures> Figures(StudyPlan plan, string output, ReadOnlySpan<double> values, int threads)
    {
        double[][]? indices = Of(values, plan.Study.Factors.Count, threads);
        return plan.Study.Factors.Select((factor, i) => new IndexFigures
        {
            Output = output,
            Factor = factor.Name,
            First = indices?[i][0],
            FirstLow = indices?[i][1],
            FirstHigh = indices?[i][2],
            Total = indices?[i][3],
            TotalLow = indices?[i][4],
            TotalHigh = indices?[i][5],
        }).ToArray();
    }

    private static double[][] WithIntervals(double[] parts, double[] sums, int points, int factors, int threads)
    {
        int terms = sums.Length;
        var first = new double[factors][];
        var total = new double[factors][];
        for (int i = 0; i < factors; i++)
        {
            first[i] = new double[Resamples];
            total[i] = new double[Resamples];
        }

        // Each sample is drawn by its own number, whichever thread draws it.
        Parallel.For(0, Resamples, new ParallelOptions { MaxDegreeOfParallelism = threads }, sample =>
        {
            double[] drawn = Drawn(parts, points, terms, sample);
            for (int i = 0; i < factors; i++)
            {
                (first[i][sample], total[i][sample]) = Index(drawn, points, i);
            }
        });

        var indices = new double[factors][];
        for (int i = 0; i < factors; i++)
        {
            (double s, double t) = Index(sums, points, i);
            Array.Sort(first[i]);
            Array.Sort(total[i]);
            indices[i] = [s, End(first[i], 0.025), End(first[i], 0.975), t, End(total[i], 0.025), End(total[i], 0.975)];
        }

        return indices;
    }

    // The sums of as many base points, drawn with return.
    private static double[] Drawn(double[] parts, int points, int terms, int sample)
    {
        double[] drawn = new double[terms];
        for (int j = 0; j < points; j += 2)
        {
            (ulong a, ulong b) = Philox.Draw(Seed, (ulong)j, (uint)sample, (uint)RandomStream.Bootstrap);
            Sum(drawn, parts.AsSpan((int)Math.BigMul(a, (ulong)points, out _) * terms, terms));
            if (j + 1 < points)
            {
                Sum(drawn, parts.AsSpan((int)Math.BigMul(b, (ulong)points, out _) * terms, terms));
            }
        }

        return drawn;
    }

    private static void Sum(double[] into, ReadOnlySpan<double> part)
    {
        for (int k = 0; k < part.Length; k++)
        {
            into[k] += part[k];
        }
    }

    private static (double First, double Total) Index(double[] sums, int points, int factor)
    {
        double variance = Variance(sums, points);
        return (1 - (sums[(2 * factor) + 2] / (2.0 * points * variance)), sums[(2 * factor) + 3] / (2.0 * points * variance));
    }

    private static double Variance(double[] sums, int points)
    {
        double mean = sums[0] / (2.0 * points);
        return (sums[1] / (2.0 * points)) - (mean * mean);
    }

    private static double End(double[] sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int low = (int)place;
        return sorted[low] + ((place - low) * (sorted[Math.Min(low + 1, sorted.Length - 1)] - sorted[low]));
    }
}
