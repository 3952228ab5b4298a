namespace Driveline.Monitoring;

/// <summary>Counts the cycles of a torque as it comes, in classes, with a bounded memory.</summary>
/// <remarks>
/// Torques are rounded to the nearest of 513 class middles from -F to F, F the full scale; a range is off by at most one class,
/// F/256. Four-point rule: what closes is counted by its range in classes, the rest is the residue. Its ranges grow and then
/// shrink strictly, each from 1 to 512 classes, so that it never holds more than 1025 reversals. The residue as half cycles gives
/// the table of ASTM E1049-85, 5.4.4; the residue run through twice gives that of a closed, repeating history, 5.4.5.
/// </remarks>
internal sealed partial class RainflowStream
{
    public const int Half = 256;
    public const int Ranges = 2 * Half;
    public const int MostOpen = (2 * Ranges) + 2;

    private readonly double classNm;
    private readonly double classesPerNm;
    private readonly long[] closed = new long[Ranges + 1];
    private readonly int[] open = new int[MostOpen];
    private int count;
    private int newest;
    private bool rises;
    private long clipped;

    public RainflowStream(MonitorSettings settings)
        : this(settings.ScaleNm / Half)
    {
    }

    private RainflowStream(double classNm)
    {
        this.classNm = classNm;
        classesPerNm = 1 / classNm;
    }

    /// <summary>Width of a class, N·m.</summary>
    public double ClassNm => classNm;

    /// <summary>Samples beyond the full scale, counted at it.</summary>
    public long Clipped => clipped;

    public void Add(double nm) => Add(Point(nm));

    public void Add(ReadOnlySpan<TorqueSample> samples)
    {
        int k = 0;
        while (k < samples.Length && count < 2)
        {
            Add(samples[k++].TorqueNm);
        }

        int at = newest;
        bool up = rises;
        for (; k < samples.Length; k++)
        {
            int point = Point(samples[k].TorqueNm);
            if (point != at && point > at != up)
            {
                open[count - 1] = at;
                Close();
                open[count++] = point;
                up = !up;
            }

            at = point;
        }

        newest = at;
        rises = up;
    }

    /// <summary>Cycles by range in classes: the closed ones, and the open ranges as halves.</summary>
    public double[] CountedWithHalves()
    {
        RainflowStream copy = Copy();
        double[] cycles = copy.Closed();
        for (int k = 1; k < copy.count; k++)
        {
            cycles[Math.Abs(copy.open[k] - copy.open[k - 1])] += 0.5;
        }

        return cycles;
    }

    /// <summary>Cycles by range in classes if the history repeated itself without end.</summary>
    public double[] CountedClosedHistory()
    {
        RainflowStream copy = Copy();
        int[] residue = copy.open.AsSpan(0, copy.count).ToArray();
        copy.count = 0;
        foreach (int point in residue)
        {
            copy.Add(point);
        }

        foreach (int point in residue)
        {
            copy.Add(point);
        }

        copy.Settle();
        copy.Close();
        return copy.Closed();
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        Settle();
        cursor.Count(ref clipped);
        cursor.Index(ref count, 0, MostOpen);
        if (cursor.IsPacked)
        {
            ExchangeResidue(ref cursor);
            cursor.Alike(closed.AsSpan(1));
        }
        else
        {
            for (int k = 0; k < count; k++)
            {
                cursor.Index(ref open[k], -Half, Half);
            }

            for (int k = 1; k <= Ranges; k++)
            {
                cursor.Count(ref closed[k]);
            }
        }

        newest = count > 0 ? open[count - 1] : 0;
        rises = count > 1 && newest > open[count - 2];
    }

    /// <summary>True when the residue is one that counting could have left: reversals, and no more of them than can be.</summary>
    public bool IsPossible()
    {
        for (int k = 1; k < count; k++)
        {
            if (open[k] is < -Half or > Half || open[k] == open[k - 1] || (k > 1 && (open[k] > open[k - 1]) == (open[k - 1] > open[k - 2])))
            {
                return false;
            }
        }

        for (int k = 3; k < count - 1; k++)
        {
            if (InnerCloses(open[k - 3], open[k - 2], open[k - 1], open[k]))
            {
                return false;
            }
        }

        return true;
    }

    // Adding 1.5 · 2⁵² rounds to the nearest whole number, halves to the even one, and leaves it in the lowest bits.
    private int Point(double nm)
    {
        double classes = nm * classesPerNm;
        if (Math.Abs(classes) <= Half + 0.5)
        {
            return (int)BitConverter.DoubleToInt64Bits(classes + 6755399441055744.0);
        }

        clipped++;
        return classes > 0 ? Half : -Half;
    }

    // Of two points or more the newest may still move on; where it stands is settled when it turns.
    private void Add(int point)
    {
        if (count > 1)
        {
            if (point > newest == rises || point == newest)
            {
                newest = rises ? Math.Max(point, newest) : Math.Min(point, newest);
                return;
            }
        }
        else if (count == 1 && point == newest)
        {
            return;
        }

        Settle();
        Close();
        rises = point > newest;
        newest = point;
        open[count++] = point;
    }

    private void Settle()
    {
        if (count > 0)
        {
            open[count - 1] = newest;
        }
    }

    // The newest point is a reversal from here on.
    private void Close()
    {
        int[] points = open;
        int left = count;
        while (left >= 4)
        {
            int last = points[left - 1], third = points[left - 2], second = points[left - 3];
            int inner = Math.Abs(third - second);
            if (inner > Math.Abs(last - third) || inner > Math.Abs(second - points[left - 4]))
            {
                break;
            }

            closed[inner]++;
            points[left - 3] = last;
            left -= 2;
        }

        count = left;
    }

    private static bool InnerCloses(int first, int second, int third, int fourth)
    {
        int inner = Math.Abs(third - second);
        return inner <= Math.Abs(fourth - third) && inner <= Math.Abs(second - first);
    }

    private double[] Closed() => Array.ConvertAll(closed, n => (double)n);

    private RainflowStream Copy()
    {
        Settle();
        var copy = new RainflowStream(classNm) { count = count, newest = newest, rises = rises };
        open.CopyTo(copy.open, 0);
        closed.CopyTo(copy.closed, 0);
        copy.Close();
        return copy;
    }
}
