namespace Driveline.Cases.Results;

/// <summary>What a study says of its rows.</summary>
internal static class StudyRows
{
    private static readonly ShapeOf<QuantileFigures> Quantiles = new ShapeOf<QuantileFigures>(
            "quantiles", "How an output is spread, over the rows in which it is known; in the unit of its name, else SI.")
        .Number("p05", q => q.P05, "Value that 5 % of the rows stay below.")
        .Number("p50", q => q.P50, "Median.")
        .Number("p95", q => q.P95, "Value that 95 % of the rows stay below.")
        .Number("mean", q => q.Mean, "Mean of the values that have an end.")
        .Number("standardDeviation", q => q.StandardDeviation, "Standard deviation (n - 1) of the same.")
        .Whole("notKnown", q => q.NotKnown, "Rows in which it is not known, the failed ones among them.")
        .Flag("exact", q => q.IsExact, "False when there are more than 1,048,576 rows: quantiles are then good to 0.01 % of the value.");

    private static readonly ShapeOf<IndexFigures> Index = new ShapeOf<IndexFigures>(
            "sensitivity", "Shares of an output's variance that a factor makes; intervals of 95 % by bootstrap.")
        .Text("output", i => i.Output, "The output.")
        .Text("factor", i => i.Factor, "Path of the factor.")
        .Number("first", i => i.First, "Share that the factor makes alone; null when the output does not vary or is not always known.")
        .Number("firstLow", i => i.FirstLow, "Low end of its interval.")
        .Number("firstHigh", i => i.FirstHigh, "High end of its interval.")
        .Number("total", i => i.Total, "Share that it makes alone and together with others.")
        .Number("totalLow", i => i.TotalLow, "Low end of its interval.")
        .Number("totalHigh", i => i.TotalHigh, "High end of its interval.");

    private static readonly ShapeOf<EffectFigures> Effect = new ShapeOf<EffectFigures>(
            "elementaryEffect", "Elementary effects: change of the output over the step of the factor, of its whole range.")
        .Text("output", e => e.Output, "The output.")
        .Text("factor", e => e.Factor, "Path of the factor.")
        .Number("mu", e => e.Mu, "Their mean.")
        .Number("muStar", e => e.MuStar, "Mean of their sizes: how much the factor matters.")
        .Number("sigma", e => e.Sigma, "Their standard deviation: whether it acts bent or together with others.");

    private static readonly ShapeOf<RankFigures> Rank = new ShapeOf<RankFigures>(
            "rankCorrelation", "Whether an output rises with a factor.")
        .Text("output", r => r.Output, "The output.")
        .Text("factor", r => r.Factor, "Path of the factor.")
        .Number("spearman", r => r.Spearman, "Spearman's rank correlation, -1 to 1; null when either does not vary.");

    private static readonly ShapeOf<SwingFigures> Swing = new ShapeOf<SwingFigures>(
            "tornado", "How far an output swings with a factor, all others varying as they do.")
        .Text("output", s => s.Output, "The output.")
        .Text("factor", s => s.Factor, "Path of the factor.")
        .Number("atLow", s => s.AtLow, "Median of the output in the lowest tenth of the factor.")
        .Number("atHigh", s => s.AtHigh, "Median of the output in the highest tenth of the factor.");

    private static readonly ShapeOf<FailureFigures> Failure = new ShapeOf<FailureFigures>("failure", "Why rows failed.")
        .Text("reason", f => f.Reason, "The reason, as it stands in the column \"error\".")
        .Whole("rows", f => f.Rows, "How many rows.")
        .Whole("firstRow", f => f.FirstRow, "The first of them, from 0.");

    public static readonly ShapeOf<StudyFigures> Shape = new ShapeOf<StudyFigures>("sweep", "A study: many rows of one case.")
        .Whole("rows", s => s.Rows, "Rows in the file, the failed ones among them.")
        .Whole("failed", s => s.Failed, "Rows that have no answer.")
        .Number("seconds", s => s.Seconds, "Time of this run, s.")
        .Number("rowsPerSecond", s => s.RowsPerSecond, "Rows by time.")
        .Map("quantiles", s => s.Quantiles, Quantiles, "Spread of each output that is a number.")
        .Add("shares", ResultType.NumbersByNames, "Share of the rows that have each value, for each output that is a word; 0 to 1.",
            (json, s, _) =>
            {
                json.StartObject();
                foreach (KeyValuePair<string, IReadOnlyList<KeyValuePair<string, double>>> output in s.Shares)
                {
                    json.Name(output.Key);
                    json.StartObject();
                    foreach (KeyValuePair<string, double> share in output.Value)
                    {
                        json.Name(share.Key);
                        json.Number(share.Value);
                    }

                    json.EndObject();
                }

                json.EndObject();
            })
        .List("sensitivity", s => s.Sensitivity, Index, "Variance-based indices, when the study asks for them.")
        .MaybeText("sensitivityRefused", s => s.SensitivityRefused, "Why there are none, when they were asked for; else null.")
        .List("morris", s => s.Morris, Effect, "Elementary effects, of a design of that kind.")
        .List("rankCorrelation", s => s.RankCorrelation, Rank, "Rank correlation of each output that is a number with each factor.")
        .List("tornado", s => s.Tornado, Swing, "Swing of each output that is a number with each factor, the widest first.")
        .List("failures", s => s.Failures, Failure, "Why rows failed, the most frequent first; at most 20.");
}
