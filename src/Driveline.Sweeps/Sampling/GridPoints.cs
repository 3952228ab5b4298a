namespace Driveline.Sweeps.Sampling;

/// <summary>All combinations of levels; the last factor runs fastest.</summary>
internal sealed class GridPoints : UnitPoints
{
    private readonly int[] levels;
    private readonly double[][] values;

    /// <param name="levels">Number of levels of each factor.</param>
    /// <param name="isDiscrete">Whether a factor is a list, whose levels are cells rather than ends.</param>
    /// <param name="count">Their product.</param>
    public GridPoints(int[] levels, bool[] isDiscrete, long count)
        : base(levels.Length, count)
    {
        this.levels = levels;
        values = [.. levels.Select((n, d) => Enumerable.Range(0, n).Select(i => Level(i, n, isDiscrete[d])).ToArray())];
    }

    /// <summary>The number of combinations, as large as it may be.</summary>
    public static System.Numerics.BigInteger CountOf(IEnumerable<int> levels) =>
        levels.Aggregate(System.Numerics.BigInteger.One, (product, n) => product * n);

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        long repeated = 1;
        for (int d = levels.Length - 1; d >= 0; d--)
        {
            for (int k = 0; k < count; k++)
            {
                columns[d][at + k] = values[d][(first + k) / repeated % levels[d]];
            }

            repeated *= levels[d];
        }
    }

    private static double Level(int level, int levels, bool isDiscrete) =>
        isDiscrete || levels == 1 ? (level + 0.5) / levels : (double)level / (levels - 1);
}
