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
        int tenth = Math.Max(1, ordered.Length / 10);
        return new SwingFigures
        {
            Output = plan.Outputs[output].Name,
            Factor = plan.Study.Factors[factor].Name,
            AtLow = ordered.Length == 0 ? null : Median(ordered.AsSpan(0, tenth)),
            AtHigh = ordered.Length == 0 ? null : Median(ordered.AsSpan(ordered.Length - tenth)),
        };
    }

    private static double Median(Span<double> values)
    {
        values.Sort();
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
