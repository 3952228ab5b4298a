namespace Driveline.Sweeps.Sampling;

/// <summary>
/// The counter-based generator Philox4x32-10: what it gives depends on key and counter alone, never on what was drawn before.
/// </summary>
/// <remarks>
/// Source: J. K. Salmon et al., "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011). Known answer for counter and key 0:
/// 6627e8d5 e169c58d bc57ac4c 9b00dbd8.
/// </remarks>
internal static class Philox
{
    private const uint M0 = 0xD2511F53;
    private const uint M1 = 0xCD9E8D57;
    private const uint W0 = 0x9E3779B9;
    private const uint W1 = 0xBB67AE85;

    /// <summary>Two words of 64 bits for a key and a counter.</summary>
    public static (ulong First, ulong Second) Draw(ulong key, ulong row, uint column, uint stream)
    {
        uint c0 = (uint)row;
        uint c1 = (uint)(row >> 32);
        uint c2 = column;
        uint c3 = stream;
        uint k0 = (uint)key;
        uint k1 = (uint)(key >> 32);
        for (int round = 0; round < 10; round++)
        {
            ulong p0 = (ulong)M0 * c0;
            ulong p1 = (ulong)M1 * c2;
            c0 = (uint)(p1 >> 32) ^ c1 ^ k0;
            c1 = (uint)p1;
            c2 = (uint)(p0 >> 32) ^ c3 ^ k1;
            c3 = (uint)p0;
            k0 += W0;
            k1 += W1;
        }

        return (((ulong)c1 << 32) | c0, ((ulong)c3 << 32) | c2);
    }

    /// <summary>A number in (0, 1) with 53 bits; never 0 and never 1.</summary>
    public static double Unit(ulong bits) => ((bits >> 12) + 0.5) * (1.0 / (1UL << 52));

    /// <summary>A number in (0, 1) for a key and a counter.</summary>
    public static double Unit(ulong key, ulong row, uint column, uint stream) => Unit(Draw(key, row, column, stream).First);

    /// <summary>A whole number in [0, bound), evenly to within bound / 2^64.</summary>
    public static ulong Below(ulong key, ulong row, uint column, uint stream, ulong bound) =>
        Math.BigMul(Draw(key, row, column, stream).First, bound, out _);
}
