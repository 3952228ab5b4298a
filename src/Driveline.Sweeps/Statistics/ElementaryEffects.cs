using Driveline.Cases.Results;
using Driveline.Sweeps.Sampling;

namespace Driveline.Sweeps.Statistics;

/// <summary>
/// Elementary effects of Morris trajectories: change of the output over the step, as a share of the factor's whole range.
/// </summary>
/// <remarks>
/// μ their mean, μ* the mean of their sizes (F. Campolongo et al., Environ. Model. Softw. 22 (2007) 1509-1518), σ (n − 1).
/// </remarks>
internal static class ElementaryEffects
{
    public static IEnumerable<EffectFigures> Figures(StudyPlan plan, string output, ReadOnlySpan<double> values)
    {
        var points = (MorrisPoints)plan.Points;
        int k = points.Dimensions;
        List<double>[] effects = [.. Enumerable.Range(0, k).Select(_ => new List<double>())];
        for (int t = 0; t < values.Length / (k + 1); t++)
        {
            ReadOnlySpan<double> run = values.Slice(t * (k + 1), k + 1);
            for (int step = 0; step < k; step++)
            {
                int factor = points.Stepped(t, step);
                double effect = (run[step + 1] - run[step]) / (points.IsUpward(t, factor) ? points.Step : -points.Step);
                if (double.IsFinite(effect))
                {
                    effects[factor].Add(effect);
                }
            }
        }

        return plan.Study.Factors.Select((factor, i) => Of(output, factor.Name, effects[i])).ToArray();
    }

    private static EffectFigures Of(string output, string factor, List<double> effects)
    {
        double? mean = effects.Count > 0 ? effects.Average() : null;
        return new EffectFigures
        {
            Output = output,
            Factor = factor,
            Mu = mean,
            MuStar = effects.Count > 0 ? effects.Average(Math.Abs) : null,
            Sigma = effects.Count > 1 ? Math.Sqrt(effects.Sum(e => (e - mean!.Value) * (e - mean.Value)) / (effects.Count - 1)) : null,
        };
    }
}
