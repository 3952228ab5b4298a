namespace Driveline.Sweeps.Sampling;

/// <summary>A Latin hypercube: each dimension cut into as many strata as there are rows, one point in each.</summary>
/// <remarks>McKay, Beckman and Conover, Technometrics 21 (1979) 239-245. The point lies at random within its stratum.</remarks>
internal sealed class LatinPoints : UnitPoints
{
    private readonly ulong seed;
    private readonly Permutation[] orders;

    public LatinPoints(int dimensions, long count, ulong seed)
        : base(dimensions, count)
    {
        this.seed = seed;
        orders = [.. Enumerable.Range(0, dimensions).Select(d => new Permutation(count, seed, (uint)d))];
    }

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        for (int d = 0; d < Dimensions; d++)
        {
            double[] column = columns[d];
            for (int k = 0; k < count; k++)
            {
                column[at + k] = Placed(orders[d][first + k], Count, seed, first + k, d);
            }
        }
    }

    /// <summary>The place in its stratum; kept off the upper edge, so that rounding never moves a point into the next.</summary>
    public static double Placed(long stratum, long strata, ulong seed, long row, int dimension)
    {
        double jitter = Philox.Unit(seed, (ulong)row, (uint)dimension, (uint)RandomStream.Jitter);
        double placed = (stratum + jitter) / strata;
        return Math.Min(placed, Math.BitDecrement((double)(stratum + 1) / strata));
    }
}
