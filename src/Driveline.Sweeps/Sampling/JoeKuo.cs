using System.Globalization;

namespace Driveline.Sweeps.Sampling;

/// <summary>Direction numbers of Joe and Kuo for 1,111 dimensions, 32 bits each.</summary>
/// <remarks>
/// S. Joe and F. Y. Kuo, SIAM J. Sci. Comput. 30 (2008) 2635-2654, new-joe-kuo-6.21201, of which the first 1,111 dimensions are
/// held; licence beside the data. Dimension 1 is van der Corput's sequence in base 2.
/// </remarks>
internal static class JoeKuo
{
    public const int Dimensions = 1111;
    public const int Bits = 32;

    private static readonly Lazy<uint[][]> Held = new(Read);

    /// <summary>The 32 direction numbers of a dimension, from 0; the first has the highest bit alone. Do not change them.</summary>
    public static uint[] Of(int dimension) => Held.Value[dimension];

    private static uint[][] Read()
    {
        var all = new List<uint[]>(Dimensions) { Enumerable.Range(0, Bits).Select(k => 1u << (Bits - 1 - k)).ToArray() };
        using var reader = new StreamReader(typeof(JoeKuo).Assembly.GetManifestResourceStream("sampling/joe-kuo-6.1111.txt")!);
        reader.ReadLine();
        while (reader.ReadLine() is { Length: > 0 } line)
        {
            uint[] row = [.. line.Split(' ').Select(cell => uint.Parse(cell, CultureInfo.InvariantCulture))];
            all.Add(Numbers((int)row[1], row[2], row.AsSpan(3)));
        }

        return [.. all];
    }

    // v_k = m_k / 2^k; beyond the degree s of the polynomial by its recurrence.
    private static uint[] Numbers(int s, uint a, ReadOnlySpan<uint> m)
    {
        uint[] v = new uint[Bits];
        for (int k = 0; k < Bits; k++)
        {
            if (k < s)
            {
                v[k] = m[k] << (Bits - 1 - k);
                continue;
            }

            v[k] = v[k - s] ^ (v[k - s] >> s);
            for (int j = 1; j < s; j++)
            {
                v[k] ^= ((a >> (s - 1 - j)) & 1) * v[k - j];
            }
        }

        return v;
    }
}
