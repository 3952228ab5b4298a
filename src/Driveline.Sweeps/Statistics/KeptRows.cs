using Driveline.Sweeps.Running;
using Driveline.Sweeps.Sampling;

namespace Driveline.Sweeps.Statistics;

/// <summary>
/// Factors and numbers of at most about 2^17 rows, chosen by their number alone, for rank correlation, tornado and pictures.
/// </summary>
internal sealed class KeptRows
{
    private const long Most = 1 << 17;

    private readonly ulong threshold;
    private readonly List<double>[] factors;
    private readonly List<double>[] numbers;

    public KeptRows(StudyPlan plan)
    {
        threshold = plan.Count <= Most ? ulong.MaxValue : (ulong)(ulong.MaxValue * ((double)Most / plan.Count));
        factors = [.. plan.Study.Factors.Select(_ => new List<double>())];
        numbers = [.. plan.Outputs.Select(_ => new List<double>())];
    }

    public int Count => factors[0].Count;

    public ReadOnlySpan<double> Factor(int factor) => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(factors[factor]);

    public ReadOnlySpan<double> Number(int output) => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(numbers[output]);

    public void Add(RowGroup group)
    {
        for (int k = 0; k < group.Count; k++)
        {
            if (threshold < ulong.MaxValue && Philox.Draw(0, (ulong)(group.First + k), 0, uint.MaxValue).First > threshold)
            {
                continue;
            }

            for (int d = 0; d < factors.Length; d++)
            {
                factors[d].Add(group.Factors[d][k]);
            }

            for (int o = 0; o < numbers.Length; o++)
            {
                if (group.Numbers[o].Length > 0)
                {
                    numbers[o].Add(group.Numbers[o][k]);
                }
            }
        }
    }
}
