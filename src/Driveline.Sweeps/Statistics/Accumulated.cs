using Driveline.Cases.Results;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Statistics;

/// <summary>What is gathered of the rows of a study while they pass, in order.</summary>
internal sealed class Accumulated
{
    private const int MostReasons = 20;

    private readonly StudyPlan plan;
    private readonly ValueSpread[] spreads;
    private readonly WordShares[] words;
    private readonly KeptRows kept;
    private readonly List<double>[]? whole;
    private readonly Dictionary<string, FailureFigures> failures = new(StringComparer.Ordinal);
    private readonly List<GroupTally> tallies = [];
    private readonly bool isCounting;
    private readonly int threads;
    private bool isClosed;

    /// <param name="plan">The study.</param>
    /// <param name="isWhole">True when every row of it passes.</param>
    /// <param name="rows">How many rows pass.</param>
    /// <param name="threads">How many threads its figures may take.</param>
    public Accumulated(StudyPlan plan, bool isWhole, long rows, int threads)
    {
        this.threads = threads;
        this.plan = plan;
        isCounting = rows > ValueSpread.MostExact;
        spreads = [.. plan.Outputs.Select(_ => new ValueSpread())];
        words = [.. plan.Outputs.Select(_ => new WordShares())];
        kept = new KeptRows(plan);
        bool isOrdered = plan.Study.Sensitivity || plan.Study.Design.Kind == DesignKind.Morris;
        whole = isWhole && isOrdered ? [.. plan.Outputs.Select(_ => new List<double>())] : null;
    }

    public long Rows { get; private set; }

    public long Failed { get; private set; }

    public KeptRows Kept => kept;

    /// <summary>A tally for a thread that computes groups; each group passes through one before it is added.</summary>
    public GroupTally NewTally()
    {
        var tally = new GroupTally(plan, isCounting);
        lock (tallies)
        {
            tallies.Add(tally);
        }

        return tally;
    }

    /// <summary>Adds the next group, which a tally has summed up.</summary>
    public void Add(RowGroup group)
    {
        Rows += group.Count;
        Failed += group.Failed;
        for (int o = 0; o < plan.Outputs.Count; o++)
        {
            if (plan.Outputs[o].IsWord)
            {
                words[o].Add(group.Words[o].AsSpan(0, group.Count));
            }
            else
            {
                spreads[o].Add(group.Numbers[o].AsSpan(0, group.Count), in group.Summaries[o]);
                whole?[o].AddRange(group.Numbers[o].AsSpan(0, group.Count));
            }
        }

        kept.Add(group);
        for (int k = 0; group.Failed > 0 && k < group.Count; k++)
        {
            if (group.Errors[k] is { } reason)
            {
                Fail(reason, group.First + k);
            }
        }
    }

    /// <summary>The figures of everything that passed.</summary>
    public StudyFigures Figures(double seconds)
    {
        Close();
        var figures = new StudyFigures
        {
            Rows = Rows,
            Failed = Failed,
            Seconds = seconds,
            Quantiles = [.. Indices(isWord: false).Select(o => new KeyValuePair<string, QuantileFigures>(
                plan.Outputs[o].Name, FiguresOf(spreads[o])))],
            Shares = [.. Indices(isWord: true).Select(o => new KeyValuePair<string, IReadOnlyList<KeyValuePair<string, double>>>(
                plan.Outputs[o].Name, words[o].Shares()))],
            Failures = [.. failures.Values.OrderByDescending(f => f.Rows).ThenBy(f => f.FirstRow).Take(MostReasons)],
        };
        FactorSwings.Add(plan, kept, figures);
        if (plan.Study.Sensitivity && whole is not null)
        {
            figures.Sensitivity = [.. Indices(false).SelectMany(
                o => VarianceIndices.Figures(plan, plan.Outputs[o].Name, Whole(o), threads))];
        }
        else if (plan.Study.Sensitivity)
        {
            figures.SensitivityRefused = "A shard has not all rows; merge the shards, then run sweep --resume on the merged file.";
        }

        if (plan.Study.Design.Kind == DesignKind.Morris && whole is not null)
        {
            figures.Morris = [.. Indices(false).SelectMany(o => ElementaryEffects.Figures(plan, plan.Outputs[o].Name, Whole(o)))];
        }

        return figures;
    }

    // What the threads counted is put together once all groups have passed.
    private void Close()
    {
        for (int o = 0; o < spreads.Length && !isClosed; o++)
        {
            foreach (GroupTally tally in tallies)
            {
                if (tally.Counts.Length > 0 && tally.Counts[o] is { } counted)
                {
                    spreads[o].Take(counted);
                }
            }
        }

        isClosed = true;
    }

    private ReadOnlySpan<double> Whole(int output) => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(whole![output]);

    private IEnumerable<int> Indices(bool isWord) => Enumerable.Range(0, plan.Outputs.Count).Where(o => plan.Outputs[o].IsWord == isWord);

    private static QuantileFigures FiguresOf(ValueSpread spread) => new()
    {
        P05 = spread.Quantile(0.05),
        P50 = spread.Quantile(0.50),
        P95 = spread.Quantile(0.95),
        Mean = spread.Mean,
        StandardDeviation = spread.StandardDeviation,
        NotKnown = spread.NotKnown,
        IsExact = spread.IsExact,
    };

    // Reasons with numbers in them are many: no more than a thousand are told apart.
    private void Fail(string reason, long row)
    {
        if (!failures.TryGetValue(reason, out FailureFigures? known))
        {
            string name = failures.Count < 1000 ? reason : "other reasons";
            if (!failures.TryGetValue(name, out known))
            {
                failures.Add(name, known = new FailureFigures { Reason = name, FirstRow = row });
            }
        }

        known.Rows++;
    }
}
