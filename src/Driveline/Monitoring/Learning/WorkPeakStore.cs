namespace Driveline.Monitoring;

/// <summary>The peaks of work over a threshold: the highest of each cluster, of which the 512 highest are kept.</summary>
/// <remarks>
/// A cluster ends when the torque has stayed below the threshold for a stated time (runs declustering; Coles 2001, 5.3). When more than 512
/// have come, the lowest go, and the threshold rises to the highest of those: what is kept is still every peak above a known level.
/// Peaks are kept to 24 binary digits, rounded up, so that a full store stays short in a snapshot.
/// A cluster in which the device slipped or let go is no work peak anybody can vouch for: it is counted apart.
/// </remarks>
internal sealed class WorkPeakStore(MonitorSettings settings)
{
    public const int Most = 512;

    private readonly double[] heap = new double[Most];
    private int count;
    private bool open;
    private bool tainted;
    private double peakNm;
    private double lastAboveS;
    private double droppedNm;
    private double highestNm;
    private long clusters;
    private long setAside;

    /// <summary>Clusters that were counted.</summary>
    public long Clusters => clusters;

    /// <summary>Clusters set aside.</summary>
    public long SetAside => setAside;

    /// <summary>The level above which every peak is kept.</summary>
    public double LevelNm => Math.Max(settings.PeaksFromNm, droppedNm);

    /// <summary>Highest peak counted; 0 when none was.</summary>
    public double HighestNm => highestNm;

    /// <summary>The peaks kept, in no order, with the one still open.</summary>
    public double[] Peaks()
    {
        double[] peaks = new double[count];
        Array.Copy(heap, peaks, count);
        return peaks;
    }

    public void Step(in TorqueSample sample, bool works, bool taints)
    {
        bool above = works && sample.TorqueNm >= settings.PeaksFromNm;
        if (open && above && !taints)
        {
            peakNm = sample.TorqueNm > peakNm ? sample.TorqueNm : peakNm;
            lastAboveS = sample.TimeS;
        }
        else if (open || above)
        {
            Change(in sample, works, above, taints);
        }
    }

    /// <summary>Takes samples of work in which the device holds.</summary>
    public void Work(ReadOnlySpan<TorqueSample> samples)
    {
        double fromNm = settings.PeaksFromNm;
        int k = 0;
        while (k < samples.Length)
        {
            if (open)
            {
                k += Stay(samples.Slice(k));
            }

            while (k < samples.Length && !open)
            {
                if (samples[k].TorqueNm >= fromNm)
                {
                    Change(in samples[k], works: true, above: true, taints: false);
                }

                k++;
            }
        }
    }

    /// <summary>Ends the cluster that is open.</summary>
    public void Cut()
    {
        if (!open)
        {
            return;
        }

        open = false;
        if (tainted)
        {
            setAside++;
            return;
        }

        clusters++;
        highestNm = Math.Max(highestNm, peakNm);
        Keep(Rounded.Up(peakNm, Rounded.ShortZeros));
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Flag(ref open);
        cursor.Flag(ref tainted);
        cursor.Number(ref peakNm);
        cursor.Number(ref lastAboveS);
        cursor.Number(ref droppedNm);
        cursor.Number(ref highestNm);
        cursor.Count(ref clusters);
        cursor.Count(ref setAside);
        cursor.Index(ref count, 0, Most);
        if (!cursor.Reads)
        {
            // In order they are still a heap, and the same ones give the same bytes however they came.
            Array.Sort(heap, 0, count);
        }

        if (cursor.IsPacked)
        {
            cursor.Rising(heap.AsSpan(0, count), Rounded.ShortZeros);
            return;
        }

        for (int k = 0; k < count; k++)
        {
            cursor.Number(ref heap[k]);
            heap[k] = Rounded.Up(heap[k], Rounded.ShortZeros);
        }
    }

    // Samples until the cluster ends; how many. The time of the newest one above the threshold is chosen by the sign of the torque less the
    // threshold: a branch there is the worst that can be for torques that come and go.
    private int Stay(ReadOnlySpan<TorqueSample> samples)
    {
        double fromNm = settings.PeaksFromNm, apartS = settings.PeaksApartS, highNm = peakNm;
        long aboveAt = BitConverter.DoubleToInt64Bits(lastAboveS);
        int k = 0;
        while (k < samples.Length)
        {
            double nm = samples[k].TorqueNm, timeS = samples[k].TimeS;
            k++;
            long below = BitConverter.DoubleToInt64Bits(nm - fromNm) >> 63;
            long now = BitConverter.DoubleToInt64Bits(timeS);
            aboveAt = (aboveAt & below) | (now & ~below);
            if (nm > highNm)
            {
                highNm = nm;
            }

            if (below != 0 & timeS - BitConverter.Int64BitsToDouble(aboveAt) >= apartS)
            {
                peakNm = highNm;
                lastAboveS = BitConverter.Int64BitsToDouble(aboveAt);
                Cut();
                return k;
            }
        }

        peakNm = highNm;
        lastAboveS = BitConverter.Int64BitsToDouble(aboveAt);
        return k;
    }

    private void Change(in TorqueSample sample, bool works, bool above, bool taints)
    {
        if (open)
        {
            tainted |= taints;
            if (above)
            {
                peakNm = Math.Max(peakNm, sample.TorqueNm);
                lastAboveS = sample.TimeS;
            }
            else if (!works || sample.TimeS - lastAboveS >= settings.PeaksApartS)
            {
                Cut();
            }
        }
        else
        {
            open = true;
            tainted = taints;
            peakNm = sample.TorqueNm;
            lastAboveS = sample.TimeS;
        }
    }

    private void Keep(double nm)
    {
        if (count < Most)
        {
            Rise(nm);
        }
        else if (nm <= heap[0])
        {
            droppedNm = Math.Max(droppedNm, nm);
        }
        else
        {
            droppedNm = Math.Max(droppedNm, heap[0]);
            Sink(nm);
        }
    }

    private void Rise(double nm)
    {
        int k = count++;
        while (k > 0 && heap[(k - 1) / 2] > nm)
        {
            heap[k] = heap[(k - 1) / 2];
            k = (k - 1) / 2;
        }

        heap[k] = nm;
    }

    private void Sink(double nm)
    {
        int k = 0;
        while ((2 * k) + 1 < count)
        {
            int child = (2 * k) + 1;
            child += child + 1 < count && heap[child + 1] < heap[child] ? 1 : 0;
            if (heap[child] >= nm)
            {
                break;
            }

            heap[k] = heap[child];
            k = child;
        }

        heap[k] = nm;
    }
}
