namespace Driveline.Sweeps.Statistics;

/// <summary>Ranks of numbers, and what correlates by them.</summary>
internal static class Ranks
{
    /// <summary>Ranks from 1; equal numbers share their mean rank.</summary>
    public static double[] Of(ReadOnlySpan<double> values)
    {
        double[] sorted = values.ToArray();
        int[] order = new int[sorted.Length];
        for (int k = 0; k < order.Length; k++)
        {
            order[k] = k;
        }

        Array.Sort(sorted, order);
        double[] ranks = new double[order.Length];
        for (int from = 0; from < order.Length;)
        {
            int to = from + 1;
            while (to < order.Length && sorted[to].Equals(sorted[from]))
            {
                to++;
            }

            for (int k = from; k < to; k++)
            {
                ranks[order[k]] = (from + to + 1) / 2.0;
            }

            from = to;
        }

        return ranks;
    }

    /// <summary>Pearson's correlation; null when either does not vary.</summary>
    public static double? Correlation(ReadOnlySpan<double> first, ReadOnlySpan<double> second)
    {
        double meanA = 0;
        double meanB = 0;
        for (int k = 0; k < first.Length; k++)
        {
            meanA += (first[k] - meanA) / (k + 1);
            meanB += (second[k] - meanB) / (k + 1);
        }

        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int k = 0; k < first.Length; k++)
        {
            double a = first[k] - meanA;
            double b = second[k] - meanB;
            ab += a * b;
            aa += a * a;
            bb += b * b;
        }

        return aa > 0 && bb > 0 ? ab / Math.Sqrt(aa * bb) : null;
    }
}
