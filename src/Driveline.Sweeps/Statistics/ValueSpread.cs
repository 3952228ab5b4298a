namespace Driveline.Sweeps.Statistics;

/// <summary>The spread of a stream of numbers: exact up to 2^20 of them, then by counts in classes of 0.012 % of the value.</summary>
/// <remarks>
/// Classes: 8192 of equal width between two powers of 2, from 2^-40 to 2^40: the leading bits of a number are its class, so counts depend
/// neither on the order nor on the processor. NaN counts as not known. Mean and deviation are merged group by group (T. F. Chan,
/// G. H. Golub and R. J. LeVeque, Amer. Statist. 37 (1983) 242-247).
/// </remarks>
internal sealed class ValueSpread
{
    public const int MostExact = 1 << 20;

    private const int Bits = 13;
    private const int LeastPower = -40;
    private const int MostPower = 40;
    private const int Classes = (MostPower - LeastPower) << Bits;
    private const long FirstClass = (long)(LeastPower + 1023) << Bits;

    private List<double>? exact = [];
    private int[]? above;
    private int[]? below;
    private long zeros;
    private long plusInfinities;
    private long minusInfinities;
    private long finite;
    private double mean;
    private double squares;
    private bool isSorted;

    /// <summary>Values that were not known.</summary>
    public long NotKnown { get; private set; }

    public bool IsExact => exact is not null;

    public long Known => finite + plusInfinities + minusInfinities;

    public double? Mean => finite > 0 ? mean : null;

    public double? StandardDeviation => finite > 1 ? Math.Sqrt(squares / (finite - 1)) : null;

    public void Add(ReadOnlySpan<double> values)
    {
        isSorted = false;
        long before = finite;
        double shift = 0;
        double sum = 0;
        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                NotKnown += double.IsNaN(value) ? 1 : 0;
                plusInfinities += double.IsPositiveInfinity(value) ? 1 : 0;
                minusInfinities += double.IsNegativeInfinity(value) ? 1 : 0;
                continue;
            }

            shift = finite == before ? value : shift;
            sum += value - shift;
            finite++;
        }

        if (finite > before)
        {
            Merge(values, before, shift + (sum / (finite - before)));
            Keep(values);
        }
    }

    /// <summary>
    /// The value below which a share of those known lies, between two of them in proportion (type 7); null when none is known.
    /// </summary>
    public double? Quantile(double share)
    {
        long known = Known;
        if (known == 0)
        {
            return null;
        }

        double place = share * (known - 1);
        long low = (long)Math.Floor(place);
        double first = At(low);
        double second = At(Math.Min(low + 1, known - 1));
        double part = place - low;
        return part == 0 || first.Equals(second) ? first
            : double.IsInfinity(second) ? second
            : double.IsInfinity(first) ? first
            : first + (part * (second - first));
    }

    private void Merge(ReadOnlySpan<double> values, long before, double meanOfGroup)
    {
        double squaresOfGroup = 0;
        foreach (double value in values)
        {
            double apart = double.IsFinite(value) ? value - meanOfGroup : 0;
            squaresOfGroup += apart * apart;
        }

        double between = meanOfGroup - mean;
        double share = (double)(finite - before) / finite;
        mean += between * share;
        squares += squaresOfGroup + (between * between * before * share);
    }

    private void Keep(ReadOnlySpan<double> values)
    {
        if (exact is not null && finite > MostExact)
        {
            List<double> all = exact;
            exact = null;
            all.ForEach(Count);
        }

        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                continue;
            }

            if (exact is not null)
            {
                exact.Add(value);
            }
            else
            {
                Count(value);
            }
        }
    }

    private void Count(double value)
    {
        long at = (BitConverter.DoubleToInt64Bits(Math.Abs(value)) >> (52 - Bits)) - FirstClass;
        if (at < 0)
        {
            zeros++;
            return;
        }

        int[] counts = value > 0 ? above ??= new int[Classes] : below ??= new int[Classes];
        counts[Math.Min(at, Classes - 1)]++;
    }

    private double At(long place)
    {
        if (place < minusInfinities)
        {
            return double.NegativeInfinity;
        }

        place -= minusInfinities;
        if (place >= finite)
        {
            return double.PositiveInfinity;
        }

        if (exact is not null)
        {
            if (!isSorted)
            {
                exact.Sort();
                isSorted = true;
            }

            return exact[(int)place];
        }

        for (int k = Classes - 1; below is not null && k >= 0; k--)
        {
            place -= below[k];
            if (place < 0)
            {
                return -Middle(k);
            }
        }

        place -= zeros;
        for (int k = 0; place >= 0 && above is not null && k < Classes; k++)
        {
            place -= above[k];
            if (place < 0)
            {
                return Middle(k);
            }
        }

        return 0;
    }

    private static double Middle(int at)
    {
        double low = BitConverter.Int64BitsToDouble((at + FirstClass) << (52 - Bits));
        double high = BitConverter.Int64BitsToDouble((at + 1 + FirstClass) << (52 - Bits));
        return (low + high) / 2;
    }
}
