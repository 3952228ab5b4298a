using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Statistics;

/// <summary>What a thread finds of the groups it computes, before they are handed on in order.</summary>
internal sealed class GroupTally
{
    private readonly StudyPlan plan;

    /// <param name="plan">The study.</param>
    /// <param name="isCounting">True when more rows come than are kept, so that they must be counted in classes.</param>
    public GroupTally(StudyPlan plan, bool isCounting)
    {
        this.plan = plan;
        Counts = isCounting ? [.. plan.Outputs.Select(o => o.IsWord ? null : new ClassCounts())] : [];
    }

    /// <summary>The counts of each output that is a number; empty when nothing is counted.</summary>
    public ClassCounts?[] Counts { get; }

    /// <summary>Sums up the outputs of a group into its summaries.</summary>
    public void Take(RowGroup group)
    {
        for (int o = 0; o < plan.Outputs.Count; o++)
        {
            if (!plan.Outputs[o].IsWord)
            {
                ReadOnlySpan<double> values = group.Numbers[o].AsSpan(0, group.Count);
                group.Summaries[o] = ValueSummary.Of(values);
                if (Counts.Length > 0)
                {
                    Counts[o]!.Add(values);
                }
            }
        }
    }
}
