namespace Driveline.Sweeps.Statistics;

/// <summary>The spread of a stream of numbers: exact up to 2^20 of them, then by counts in classes of 0.01 %.</summary>
/// <remarks>
/// Classes: |x| in [γ^i, γ^(i+1)), γ = 1.0002, from 1e-12 to 1e12 (C. Masson, J. E. Rim and H. K. Lee, Proc. VLDB 12 (2019)
/// 2195-2205); counts do not depend on the order. NaN counts as not known. Mean and deviation by B. P. Welford, Technometrics 4 (1962).
/// </remarks>
internal sealed class ValueSpread
{
    public const int MostExact = 1 << 20;

    private const double Gamma = 1.0002;
    private const double Least = 1e-12;
    private const int Classes = 276_400;

    private static readonly double LogGamma = Math.Log(Gamma);

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
        foreach (double value in values)
        {
            Add(value);
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

    private void Add(double value)
    {
        if (double.IsNaN(value))
        {
            NotKnown++;
            return;
        }

        if (double.IsInfinity(value))
        {
            plusInfinities += value > 0 ? 1 : 0;
            minusInfinities += value < 0 ? 1 : 0;
            return;
        }

        finite++;
        double apart = value - mean;
        mean += apart / finite;
        squares += apart * (value - mean);
        if (exact is null)
        {
            Count(value);
            return;
        }

        exact.Add(value);
        if (exact.Count > MostExact)
        {
            List<double> all = exact;
            exact = null;
            all.ForEach(Count);
        }
    }

    private void Count(double value)
    {
        double size = Math.Abs(value);
        if (size < Least)
        {
            zeros++;
            return;
        }

        int at = Math.Min((int)(Math.Log(size / Least) / LogGamma), Classes - 1);
        int[] counts = value > 0 ? above ??= new int[Classes] : below ??= new int[Classes];
        counts[at]++;
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

    private static double Middle(int at) => Least * Math.Exp((at + 0.5) * LogGamma);
}
