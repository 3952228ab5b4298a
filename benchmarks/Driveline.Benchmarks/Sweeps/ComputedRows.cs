using Driveline.Sweeps;
using Driveline.Sweeps.Running;

namespace Driveline.Benchmarks.Sweeps;

/// <summary>A group of closed-form rows as the engine computes it: three sampled columns and a product.</summary>
internal sealed class ComputedRows
{
    private readonly GroupWork work;
    private readonly RowGroup group;
    private long next;

    public ComputedRows()
    {
        StudyPlan plan = StudyPlan.Of(StudyBenchmarks.ClosedFormOf(1 << 24));
        work = new GroupWork(plan);
        group = new RowGroup(plan);
    }

    public double Compute()
    {
        work.Compute(next++ & 127, group, CancellationToken.None);
        return group.Numbers[0][1000];
    }
}
