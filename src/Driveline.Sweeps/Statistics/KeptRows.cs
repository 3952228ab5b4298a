using Driveline.Sweeps.Running;

namespace Driveline.Sweeps.Statistics;

/// <summary>
/// Factors and numbers of at most 2^17 rows, chosen by their number alone, for rank correlation, tornado and pictures: one of each stretch
/// of consecutive rows, anywhere in it.
/// </summary>
internal sealed class KeptRows
{
    private const long Most = 1 << 17;

    private readonly long stretch;
    private readonly List<double>[] factors;
    private readonly List<double>[] numbers;

    public KeptRows(StudyPlan plan)
    {
        stretch = Math.Max(1, (plan.Count + Most - 1) / Most);
        factors = [.. plan.Study.Factors.Select(_ => new List<double>())];
        numbers = [.. plan.Outputs.Select(_ => new List<double>())];
    }

    public int Count => factors[0].Count;

    public ReadOnlySpan<double> Factor(int factor) => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(factors[factor]);

    public ReadOnlySpan<double> Number(int output) => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(numbers[output]);

    public void Add(RowGroup group)
    {
        if (stretch == 1)
        {
            AddAll(group);
            return;
        }

        for (long k = group.First / stretch; k * stretch < group.First + group.Count; k++)
        {
            long row = (k * stretch) + (long)(Mixed((ulong)k) % (ulong)stretch) - group.First;
            if (row >= 0 && row < group.Count)
            {
                Add(group, (int)row);
            }
        }
    }

    private void AddAll(RowGroup group)
    {
        for (int d = 0; d < factors.Length; d++)
        {
            factors[d].AddRange(group.Factors[d].AsSpan(0, group.Count));
        }

        for (int o = 0; o < numbers.Length; o++)
        {
            numbers[o].AddRange(group.Numbers[o].AsSpan(0, Math.Min(group.Count, group.Numbers[o].Length)));
        }
    }

    private void Add(RowGroup group, int row)
    {
        for (int d = 0; d < factors.Length; d++)
        {
            factors[d].Add(group.Factors[d][row]);
        }

        for (int o = 0; o < numbers.Length; o++)
        {
            if (group.Numbers[o].Length > 0)
            {
                numbers[o].Add(group.Numbers[o][row]);
            }
        }
    }

    // The finalizer of MurmurHash3 (A. Appleby, public domain): neighbouring stretches give any place.
    private static ulong Mixed(ulong number)
    {
        number = (number + 1) * 0x9E3779B97F4A7C15;
        number = (number ^ (number >> 33)) * 0xFF51AFD7ED558CCD;
        number = (number ^ (number >> 33)) * 0xC4CEB9FE1A85EC53;
        return number ^ (number >> 33);
    }
}
