namespace Driveline.Sweeps.Sampling;

/// <summary>Independent random points; each number depends on seed, row and dimension alone.</summary>
internal sealed class RandomPoints : UnitPoints
{
    private readonly ulong seed;

    public RandomPoints(int dimensions, long count, ulong seed)
        : base(dimensions, count) => this.seed = seed;

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        for (int d = 0; d < Dimensions; d += 2)
        {
            double[] even = columns[d];
            double[]? odd = d + 1 < Dimensions ? columns[d + 1] : null;
            for (int k = 0; k < count; k++)
            {
                (ulong a, ulong b) = Philox.Draw(seed, (ulong)(first + k), (uint)d, (uint)RandomStream.Points);
                even[at + k] = Philox.Unit(a);
                if (odd is not null)
                {
                    odd[at + k] = Philox.Unit(b);
                }
            }
        }
    }
}
