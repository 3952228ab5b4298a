using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <content>Many values of one kind, packed.</content>
internal ref partial struct SnapshotCursor
{
    private const int MostOnes = 24;

    /// <summary>
    /// Numbers that rise, each with so many zeros at its end: the steps from one to the next in the code of R. F. Rice (1979).
    /// </summary>
    public void Rising(Span<double> values, int zeros)
    {
        int power = (int)Bits(reads ? 0 : PowerOf(values, zeros), LengthBits);
        long before = 0;
        for (int k = 0; k < values.Length && !Failed; k++)
        {
            long now = BitConverter.DoubleToInt64Bits(values[k]) >> zeros;
            now = k == 0 ? (long)Bits((ulong)now, 64) : before + (long)Rice((ulong)(now - before), power);
            double value = BitConverter.Int64BitsToDouble(now << zeros);
            Failed |= !Guard.IsFinite(value);
            values[k] = Failed ? 0 : value;
            before = now;
        }
    }

    /// <summary>Numbers in no order, each with so many zeros at its end.</summary>
    public void Short(Span<double> values, int zeros)
    {
        for (int k = 0; k < values.Length && !Failed; k++)
        {
            double value = BitConverter.Int64BitsToDouble((long)Bits(
                (ulong)BitConverter.DoubleToInt64Bits(values[k]) >> zeros, 64 - zeros) << zeros);
            Failed |= !Guard.IsFinite(value);
            values[k] = Failed ? 0 : value;
        }
    }

    /// <summary>Counts of which neighbours are much alike: the change of their lengths in the gamma code of P. Elias (1975).</summary>
    public void Alike(Span<long> counts)
    {
        int length = 0;
        for (int k = 0; k < counts.Length && !Failed; k++)
        {
            ulong change = Zigzag(LengthOf((ulong)counts[k]) - length);
            length += (int)FromZigzag(Gamma(change + 1) - 1);
            if (length is < 0 or > 63)
            {
                Failed = true;
                return;
            }

            counts[k] = (long)WithLength((ulong)counts[k], length);
        }
    }

    /// <summary>Values from 1 to a highest one that rise or fall strictly, as a list or as a set, whichever is shorter.</summary>
    public void Strict(Span<int> values, int highest, bool rises)
    {
        int width = LengthOf((ulong)(highest - 1));
        if ((long)width * values.Length <= highest)
        {
            for (int k = 0; k < values.Length; k++)
            {
                values[k] = (int)Bits((ulong)(values[k] - 1), width) + 1;
            }

            return;
        }

        int at = 0;
        for (int step = 0; step < highest && !Failed; step++)
        {
            int value = rises ? step + 1 : highest - step;
            bool isIn = Bits(at < values.Length && values[at] == value ? 1UL : 0, 1) != 0;
            if (isIn && at == values.Length)
            {
                Failed = true;
            }
            else if (isIn)
            {
                values[at++] = value;
            }
        }

        Failed |= at != values.Length;
    }

    private static ulong PowerOf(ReadOnlySpan<double> values, int zeros)
    {
        if (values.Length < 2)
        {
            return 0;
        }

        long first = BitConverter.DoubleToInt64Bits(values[0]) >> zeros;
        long last = BitConverter.DoubleToInt64Bits(values[values.Length - 1]) >> zeros;
        int length = LengthOf((ulong)(last - first) / (ulong)(values.Length - 1));
        return (ulong)Math.Max(0, Math.Min(62, length - 1));
    }

    // Ones for the high part and a zero, then the low part; so many ones alone say that all 64 bits follow.
    private ulong Rice(ulong value, int power)
    {
        ulong high = value >> power;
        int ones = Ones(high < MostOnes ? (int)high : MostOnes);
        return ones == MostOnes
            ? Bits(value, 64)
            : ((ulong)ones << power) | Bits(value & ((1UL << power) - 1), power);
    }

    private int Ones(int count)
    {
        int seen = 0;
        while (seen < MostOnes && Bits(seen < count ? 1UL : 0, 1) != 0)
        {
            seen++;
        }

        return seen;
    }

    private ulong Gamma(ulong value)
    {
        int length = Ones(LengthOf(value) - 1) + 1;
        return WithLength(value, length);
    }

    private static ulong Zigzag(long value) => (ulong)((value << 1) ^ (value >> 63));

    private static long FromZigzag(ulong value) => (long)(value >> 1) ^ -(long)(value & 1);
}
