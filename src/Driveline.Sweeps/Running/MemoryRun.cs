using System.Diagnostics;
using Driveline.Sweeps.Statistics;

namespace Driveline.Sweeps.Running;

/// <summary>Runs a study into columns in memory.</summary>
internal static class MemoryRun
{
    public static StudyResult Run(StudyPlan plan, SweepOptions options, CancellationToken stop)
    {
        var clock = Stopwatch.StartNew();
        GroupRange range = GroupRange.Of(plan.Groups, options.Shard, options.Shards);
        long first = Math.Min(range.First * plan.RowsPerGroup, plan.Count);
        var table = new StudyTable(plan, first, Math.Min(range.End * plan.RowsPerGroup, plan.Count) - first);
        var seen = new Accumulated(plan, options.Shards == 1, table.Rows, options.Threads);
        double told = 0;
        int threads = (int)Math.Clamp(range.End - range.First, 1, options.Threads);
        var ordered = new OrderedGroups<RowGroup>(
            range,
            Enumerable.Range(0, threads == 1 ? 1 : threads + 2).Select(_ => new RowGroup(plan)),
            (_, rows) =>
            {
                seen.Add(rows);
                double now = clock.Elapsed.TotalSeconds;
                if (options.Progress is { } tell && (now - told >= 0.25 || seen.Rows == table.Rows))
                {
                    told = now;
                    tell(new StudyProgress(seen.Rows, table.Rows, seen.Failed, now, 0));
                }
            });
        ordered.Run(threads, () =>
        {
            var work = new GroupWork(plan);
            GroupTally tally = seen.NewTally();
            return (group, rows) =>
            {
                work.Compute(group, rows, stop);
                tally.Take(rows);
                table.Take(rows);
            };
        }, stop);
        return new StudyResult(plan, seen, clock.Elapsed.TotalSeconds, table);
    }
}
