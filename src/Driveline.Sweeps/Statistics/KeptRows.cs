using Driveline.Sweeps.Running;

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
            if (threshold < ulong.MaxValue && Mixed((ulong)(group.First + k)) > threshold)
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

    // The finalizer of MurmurHash3 (A. Appleby, public domain): neighbouring rows fall anywhere.
    private static ulong Mixed(ulong row)
    {
        row = (row + 1) * 0x9E3779B97F4A7C15;
        row = (row ^ (row >> 33)) * 0xFF51AFD7ED558CCD;
        row = (row ^ (row >> 33)) * 0xC4CEB9FE1A85EC53;
        return row ^ (row >> 33);
    }
}
