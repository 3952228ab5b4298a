#if NET
using System.Numerics;

namespace Driveline.Cases.Results;

/// <summary>The shortest decimal digits that read back as a double, nearest to it among those, as the format "R" gives them.</summary>
/// <remarks>
/// Source: R. Giulietti, "The Schubfach way to render doubles" (2020): the interval that rounds to the double is scaled by a power of ten,
/// of which 126 bits suffice; at most four decimals within it are looked at.
/// </remarks>
internal static class ShortestDigits
{
    // Within these a number is written without an exponent.
    private const double Least = 1e-4;
    private const double Most = 1e15;

    private const int FractionBits = 52;
    private const int ExponentBias = 1075;
    private const int LeastPower = -30;
    private const int MostPower = 30;
    private const ulong Low63 = ulong.MaxValue >> 1;

    // 10^-k to 126 bits, each made when it is first needed.
    private static readonly Power?[] Powers = new Power?[MostPower - LeastPower + 1];

    /// <summary>Writes a number of 1e-4 to 1e15 in size; false for any other.</summary>
    /// <param name="number">The number.</param>
    /// <param name="to">At least 32 bytes.</param>
    /// <param name="written">How many bytes it takes.</param>
    public static bool TryPut(double number, Span<byte> to, out int written)
    {
        written = 0;
        double size = Math.Abs(number);
        if (!(size >= Least && size < Most))
        {
            return false;
        }

        ulong digits = Of(size, out int exponent);
        if (number < 0)
        {
            to[written++] = (byte)'-';
        }

        written += Put(digits, exponent, to[written..]);
        return true;
    }

    // A normal double as digits · 10^exponent.
    private static ulong Of(double number, out int exponent)
    {
        ulong bits = BitConverter.DoubleToUInt64Bits(number);
        ulong fraction = bits & ((1UL << FractionBits) - 1);
        int q = (int)(bits >> FractionBits) - ExponentBias;
        ulong c = fraction | (1UL << FractionBits);
        ulong odd = c & 1;

        // Below a power of two the next double is only half as far.
        bool isPower = fraction == 0;
        int k = (int)(((q * 661_971_961_083L) - (isPower ? 274_743_187_321L : 0)) >> 41);
        int shift = q + BinaryExponent(-k) + 2;
        Power power = Powers[k - LeastPower] ??= new Power(k);
        ulong value = power.Times((c << 2) << shift);
        ulong low = power.Times(((c << 2) - (isPower ? 1UL : 2UL)) << shift) + odd;
        ulong high = power.Times(((c << 2) + 2) << shift);
        exponent = k;
        ulong s = value >> 2;
        ulong tens = s / 10 * 10;
        bool isLowIn = low <= tens << 2;
        bool isHighIn = ((tens + 10) << 2) + odd <= high;
        if (isLowIn != isHighIn)
        {
            return isLowIn ? tens : tens + 10;
        }

        isLowIn = low <= s << 2;
        isHighIn = ((s + 1) << 2) + odd <= high;
        if (isLowIn != isHighIn)
        {
            return isLowIn ? s : s + 1;
        }

        long over = (long)(value - (((s << 1) + 1) << 1));
        return over < 0 || (over == 0 && (s & 1) == 0) ? s : s + 1;
    }

    private static int BinaryExponent(int ten) => (int)((ten * 913_124_641_741L) >> 38);

    private static int Put(ulong digits, int exponent, Span<byte> to)
    {
        while (digits % 10 == 0)
        {
            digits /= 10;
            exponent++;
        }

        Span<byte> all = stackalloc byte[20];
        int begin = all.Length;
        for (; digits > 0; digits /= 10)
        {
            all[--begin] = (byte)('0' + (digits % 10));
        }

        ReadOnlySpan<byte> significant = all[begin..];
        int whole = significant.Length + exponent;
        if (whole <= 0)
        {
            to[..(2 - whole)].Fill((byte)'0');
            to[1] = (byte)'.';
            significant.CopyTo(to[(2 - whole)..]);
            return 2 - whole + significant.Length;
        }

        if (exponent >= 0)
        {
            significant.CopyTo(to);
            to.Slice(significant.Length, exponent).Fill((byte)'0');
            return whole;
        }

        significant[..whole].CopyTo(to);
        to[whole] = (byte)'.';
        significant[whole..].CopyTo(to[(whole + 1)..]);
        return significant.Length + 1;
    }

    // floor(10^-k · 2^-r) + 1, with r such that it has 126 bits.
    private sealed class Power
    {
        private readonly ulong high;
        private readonly ulong low;

        public Power(int k)
        {
            int r = BinaryExponent(-k) - 125;
            BigInteger over = k <= 0 ? BigInteger.Pow(10, -k) : BigInteger.One;
            BigInteger under = k > 0 ? BigInteger.Pow(10, k) : BigInteger.One;
            BigInteger power = (r <= 0 ? (over << -r) / under : over / (under << r)) + 1;
            high = (ulong)(power >> 63);
            low = (ulong)(power & Low63);
        }

        // The product without its lowest 126 bits; its last bit is set when anything was left out.
        public ulong Times(ulong factor)
        {
            ulong lowest = Math.BigMul(low, factor, out _);
            ulong highest = Math.BigMul(high, factor, out ulong middle);
            ulong sum = (middle >> 1) + lowest;
            ulong whole = highest + (sum >> 63);
            return whole | (((sum & Low63) + Low63) >> 63);
        }
    }
}
#endif
