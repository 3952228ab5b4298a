namespace Driveline.Sweeps.Sampling;

/// <summary>Sobol points by the direction numbers of Joe and Kuo, scrambled by a seed.</summary>
/// <remarks>
/// The scramble is a random linear one of the digits with a digital shift (J. Matoušek, J. Complexity 14 (1998) 527-556; A. B. Owen,
/// J. Complexity 14 (1998) 466-489): each dimension stays a (0, m, 1)-net, and each point is evenly distributed.
/// </remarks>
internal sealed class SobolPoints : UnitPoints
{
    private readonly SobolDimension[] dimensions;

    /// <param name="dimensions">1 to 1,111.</param>
    /// <param name="count">At most 2^32.</param>
    /// <param name="seed">Seed of the scramble; null for the points as published.</param>
    public SobolPoints(int dimensions, long count, ulong? seed)
        : base(dimensions, count) =>
        this.dimensions = [.. Enumerable.Range(0, dimensions).Select(d => Dimension(d, seed))];

    public override void Fill(long first, int count, double[][] columns, int at)
    {
        for (int d = 0; d < Dimensions; d++)
        {
            dimensions[d].Fill((uint)first, columns[d].AsSpan(at, count));
        }
    }

    /// <summary>One dimension, from 0.</summary>
    public static SobolDimension Dimension(int dimension, ulong? seed)
    {
        uint[] numbers = JoeKuo.Of(dimension);
        if (seed is not { } key)
        {
            return new SobolDimension(numbers, 0);
        }

        // Row r of the lower triangular matrix gives digit r from the digits above it and itself.
        uint[] rows = new uint[JoeKuo.Bits];
        for (int r = 0; r < JoeKuo.Bits; r++)
        {
            uint diagonal = 1u << (JoeKuo.Bits - 1 - r);
            uint random = (uint)Philox.Draw(key, (ulong)r, (uint)dimension, (uint)RandomStream.Scramble).First;
            rows[r] = diagonal | (random & ~(diagonal | (diagonal - 1)));
        }

        uint shift = (uint)Philox.Draw(key, JoeKuo.Bits, (uint)dimension, (uint)RandomStream.Scramble).First;
        return new SobolDimension([.. numbers.Select(v => Times(rows, v))], shift);
    }

    private static uint Times(uint[] rows, uint v)
    {
        uint product = 0;
        for (int r = 0; r < rows.Length; r++)
        {
            product |= (uint)(System.Numerics.BitOperations.PopCount(rows[r] & v) & 1) << (JoeKuo.Bits - 1 - r);
        }

        return product;
    }
}
