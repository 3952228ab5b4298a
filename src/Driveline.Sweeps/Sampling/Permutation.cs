namespace Driveline.Sweeps.Sampling;

/// <summary>A random order of 0 … n-1 of which any place can be asked for without holding the rest.</summary>
/// <remarks>
/// A balanced Feistel network of six rounds over the next even number of bits, walked until it lands inside (M. Luby and C. Rackoff,
/// SIAM J. Comput. 17 (1988) 373-386; cycle walking: J. Black and P. Rogaway, CT-RSA 2002).
/// </remarks>
internal readonly struct Permutation
{
    private const int Rounds = 6;

    private readonly ulong count;
    private readonly ulong key;
    private readonly uint column;
    private readonly int half;

    public Permutation(long count, ulong key, uint column)
    {
        this.count = (ulong)count;
        this.key = key;
        this.column = column;
        int bits = 64 - System.Numerics.BitOperations.LeadingZeroCount(Math.Max(this.count - 1, 1));
        half = (bits + 1) / 2;
    }

    /// <summary>What stands at a place.</summary>
    public long this[long place]
    {
        get
        {
            ulong at = (ulong)place;
            do
            {
                at = Walked(at);
            }
            while (at >= count);
            return (long)at;
        }
    }

    private ulong Walked(ulong value)
    {
        ulong mask = (1UL << half) - 1;
        ulong left = value >> half;
        ulong right = value & mask;
        for (uint round = 0; round < Rounds; round++)
        {
            ulong mixed = Philox.Draw(key, right, (column << 3) | round, (uint)RandomStream.Strata).First & mask;
            (left, right) = (right, left ^ mixed);
        }

        return (left << half) | right;
    }
}
