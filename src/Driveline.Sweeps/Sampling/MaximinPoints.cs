namespace Driveline.Sweeps.Sampling;

/// <summary>A Latin hypercube whose points are spread out: strata are swapped while that lowers the sum of inverse distances.</summary>
/// <remarks>
/// φ_p with p = 15 on distances between strata (M. D. Morris and T. J. Mitchell, J. Stat. Plan. Inference 43 (1995) 381-402), which
/// grows with the smallest distance. Seeded swaps, so one seed gives one design.
/// </remarks>
internal sealed class MaximinPoints : UnitPoints
{
    /// <summary>Most rows; the distances between all are weighed.</summary>
    public const int MostRows = 2000;

    private readonly ulong seed;
    private readonly int[][] strata;

    public MaximinPoints(int dimensions, int count, ulong seed)
        : base(dimensions, count)
    {
        this.seed = seed;
        strata = [.. Enumerable.Range(0, dimensions).Select(d =>
        {
            var order = new Permutation(count, seed, (uint)d);
            return Enumerable.Range(0, count).Select(row => (int)order[row]).ToArray();
        })];
        if (dimensions > 1 && count > 2)
        {
            Spread();
        }
    }

    /// <summary>Smallest distance between two points, in strata.</summary>
    public double SmallestDistance()
    {
        double least = double.PositiveInfinity;
        for (int a = 0; a < Count; a++)
        {
            for (int b = 0; b < a; b++)
            {
                least = Math.Min(least, SquaredDistance(a, b));
            }
        }

        return Math.Sqrt(least);
    }

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        for (int d = 0; d < Dimensions; d++)
        {
            for (int k = 0; k < count; k++)
            {
                columns[d][at + k] = LatinPoints.Placed(strata[d][first + k], Count, seed, first + k, d);
            }
        }
    }

    private void Spread()
    {
        int rows = (int)Count;
        long tries = Math.Min(40L * rows * Dimensions, 4_000_000_000L / ((long)rows * Dimensions * 8));
        for (long attempt = 0; attempt < tries; attempt++)
        {
            (ulong drawn, ulong second) = Philox.Draw(seed, (ulong)attempt, 0, (uint)RandomStream.Swaps);
            int d = (int)Math.BigMul(second, (ulong)Dimensions, out _);
            int a = (int)Math.BigMul(drawn & 0xFFFFFFFF00000000, (ulong)rows, out _);
            int b = (int)(((drawn & 0xFFFFFFFF) * (ulong)rows) >> 32);
            if (a == b)
            {
                continue;
            }

            double before = Crowding(a, b);
            (strata[d][a], strata[d][b]) = (strata[d][b], strata[d][a]);
            if (Crowding(a, b) >= before)
            {
                (strata[d][a], strata[d][b]) = (strata[d][b], strata[d][a]);
            }
        }
    }

    // The pair itself is as far apart after a swap as before.
    private double Crowding(int a, int b)
    {
        double sum = 0;
        for (int other = 0; other < Count; other++)
        {
            if (other != a && other != b)
            {
                sum += Inverse(SquaredDistance(a, other)) + Inverse(SquaredDistance(b, other));
            }
        }

        return sum;
    }

    private static double Inverse(double squared)
    {
        double inverse = 1 / squared;
        double fourth = inverse * inverse * inverse * inverse;
        return fourth * inverse * inverse * inverse * Math.Sqrt(inverse);   // (1 / d)^15
    }

    private double SquaredDistance(int a, int b)
    {
        double sum = 0;
        foreach (int[] column in strata)
        {
            double apart = column[a] - column[b];
            sum += apart * apart;
        }

        return sum;
    }
}
