namespace Driveline.Sweeps.Statistics;

/// <summary>The spread of a stream of numbers: exact up to 2^20 of them, then by counts in classes of 0.012 % of the value.</summary>
/// <remarks>
/// NaN counts as not known. Mean and deviation are merged group by group (T. F. Chan, G. H. Golub and R. J. LeVeque, Amer. Statist. 37
/// (1983) 242-247).
/// </remarks>
internal sealed class ValueSpread
{
    public const int MostExact = 1 << 20;

    private readonly ClassCounts counts = new();
    private List<double>? exact = [];
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
        counts.Add(values);
        Add(values, ValueSummary.Of(values));
    }

    /// <summary>Adds the next group, whose summary is known already; its values are counted elsewhere, see <see cref="Take"/>.</summary>
    public void Add(ReadOnlySpan<double> values, in ValueSummary group)
    {
        NotKnown += group.NotKnown;
        plusInfinities += group.PlusInfinities;
        minusInfinities += group.MinusInfinities;
        if (group.Finite == 0)
        {
            return;
        }

        isSorted = false;
        long before = finite;
        finite += group.Finite;
        double between = group.Mean - mean;
        double share = (double)group.Finite / finite;
        mean += between * share;
        squares += group.Squares + (between * between * before * share);
        Keep(values, group.Finite);
    }

    /// <summary>Takes over what was counted of its values elsewhere.</summary>
    public void Take(ClassCounts counted) => counts.Add(counted);

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

    private void Keep(ReadOnlySpan<double> values, long known)
    {
        if (finite > MostExact)
        {
            exact = null;
        }
        else if (known == values.Length)
        {
            exact!.AddRange(values);
        }
        else
        {
            foreach (double value in values)
            {
                if (double.IsFinite(value))
                {
                    exact!.Add(value);
                }
            }
        }
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

        if (exact is null)
        {
            return counts.At(place);
        }

        if (!isSorted)
        {
            exact.Sort();
            isSorted = true;
        }

        return exact[(int)place];
    }
}
