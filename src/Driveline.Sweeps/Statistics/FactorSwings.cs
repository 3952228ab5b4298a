using Driveline.Cases.Results;

namespace Driveline.Sweeps.Statistics;

/// <summary>Rank correlations and swings of the kept rows.</summary>
internal static class FactorSwings
{
    public static void Add(StudyPlan plan, KeptRows kept, StudyFigures to)
    {
        var correlations = new List<RankFigures>();
        var swings = new List<SwingFigures>();
        for (int o = 0; o < plan.Outputs.Count; o++)
        {
            if (plan.Outputs[o].IsWord)
            {
                continue;
            }

            var ofOutput = new List<SwingFigures>();
            double[] output = [.. Known(kept.Number(o), kept.Number(o))];
            double[] ranks = Ranks.Of(output);
            for (int d = 0; d < plan.Study.Factors.Count; d++)
            {
                double[] factor = [.. Known(kept.Factor(d), kept.Number(o))];
                correlations.Add(new RankFigures
                {
                    Output = plan.Outputs[o].Name,
                    Factor = plan.Study.Factors[d].Name,
                    Spearman = Ranks.Correlation(Ranks.Of(factor), ranks),
                });
                ofOutput.Add(Swing(plan, o, d, factor, output));
            }

            swings.AddRange(ofOutput.OrderByDescending(s => s.AtHigh is { } high && s.AtLow is { } low && !double.IsNaN(high - low)
                ? Math.Abs(high - low) : -1));
        }

        to.RankCorrelation = correlations;
        to.Tornado = swings;
    }

    private static SwingFigures Swing(StudyPlan plan, int output, int factor, double[] by, double[] values)
    {
        double[] ordered = [.. values];
        double[] keys = [.. by];
        Array.Sort(keys, ordered);
        (int low, int high) = Tenths(keys);
        return new SwingFigures
        {
            Output = plan.Outputs[output].Name,
            Factor = plan.Study.Factors[factor].Name,
            AtLow = ordered.Length == 0 ? null : Median(ordered[..low]),
            AtHigh = ordered.Length == 0 ? null : Median(ordered[high..]),
        };
    }

    // Rows with the same value of a factor belong together, so that both ends may hold the same rows.
    private static (int LowEnd, int HighBegin) Tenths(double[] keys)
    {
        int tenth = Math.Max(1, keys.Length / 10);
        int low = Math.Min(tenth, keys.Length);
        int high = Math.Max(0, keys.Length - tenth);
        while (low > 0 && low < keys.Length && keys[low] == keys[low - 1])
        {
            low++;
        }

        while (high > 0 && high < keys.Length && keys[high - 1] == keys[high])
        {
            high--;
        }

        return (low, high);
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        int middle = values.Length / 2;
        return values.Length % 2 == 1 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
    }

    private static List<double> Known(ReadOnlySpan<double> values, ReadOnlySpan<double> of)
    {
        var known = new List<double>(values.Length);
        for (int k = 0; k < values.Length; k++)
        {
            if (!double.IsNaN(of[k]))
            {
                known.Add(values[k]);
            }
        }

        return known;
    }
}
