namespace Driveline.Sweeps.Statistics;

/// <summary>Counts of finite numbers in classes of 0.012 % of the value; of several threads they may be added in any order.</summary>
/// <remarks>
/// 8192 classes of equal width between two powers of 2, from 2^-40 to 2^40: the leading bits of a number are its class, so counts depend
/// neither on the order nor on the processor. Room is made for the powers that come.
/// </remarks>
internal sealed class ClassCounts
{
    private const int Bits = 13;
    private const int LeastPower = -40;
    private const int MostPower = 40;
    private const int Powers = MostPower - LeastPower;
    private const int Classes = Powers << Bits;
    private const long FirstClass = (long)(LeastPower + 1023) << Bits;

    private readonly long[]?[] above = new long[]?[Powers];
    private readonly long[]?[] below = new long[]?[Powers];
    private long zeros;

    public void Add(ReadOnlySpan<double> values)
    {
        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                continue;
            }

            long at = (BitConverter.DoubleToInt64Bits(Math.Abs(value)) >> (52 - Bits)) - FirstClass;
            if (at < 0)
            {
                zeros++;
                continue;
            }

            int place = (int)Math.Min(at, Classes - 1);
            long[]?[] side = value > 0 ? above : below;
            (side[place >> Bits] ??= new long[1 << Bits])[place & ((1 << Bits) - 1)]++;
        }
    }

    public void Add(ClassCounts other)
    {
        zeros += other.zeros;
        Add(above, other.above);
        Add(below, other.below);
    }

    /// <summary>The middle of the class of the number at a place, when all are in order.</summary>
    public double At(long place)
    {
        for (int k = Classes - 1; k >= 0; k--)
        {
            place -= below[k >> Bits]?[k & ((1 << Bits) - 1)] ?? 0;
            if (place < 0)
            {
                return -Middle(k);
            }
        }

        place -= zeros;
        for (int k = 0; place >= 0 && k < Classes; k++)
        {
            place -= above[k >> Bits]?[k & ((1 << Bits) - 1)] ?? 0;
            if (place < 0)
            {
                return Middle(k);
            }
        }

        return 0;
    }

    private static void Add(long[]?[] to, long[]?[] from)
    {
        for (int power = 0; power < Powers; power++)
        {
            long[]? counts = from[power];
            for (int k = 0; counts is not null && k < counts.Length; k++)
            {
                (to[power] ??= new long[1 << Bits])[k] += counts[k];
            }
        }
    }

    private static double Middle(int at)
    {
        double low = BitConverter.Int64BitsToDouble((at + FirstClass) << (52 - Bits));
        double high = BitConverter.Int64BitsToDouble((at + 1 + FirstClass) << (52 - Bits));
        return (low + high) / 2;
    }
}
