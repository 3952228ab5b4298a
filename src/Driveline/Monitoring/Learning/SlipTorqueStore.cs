namespace Driveline.Monitoring;

/// <summary>The torque of slips over the hours the PTO has turned; 128 of them, spread over the whole time.</summary>
/// <remarks>
/// The torque of a slip is its heat over its angle. When 128 are held, every second one goes and from then on only every second
/// slip is kept, then every fourth: evenly spread, unchanged values. Hours are kept to 33 binary digits, torques to 24.
/// </remarks>
internal sealed class SlipTorqueStore
{
    public const int Most = 128;

    private const double LeastRad = 1;

    private readonly double[] hours = new double[Most];
    private readonly double[] torquesNm = new double[Most];
    private int count;
    private long seen;
    private long stride = 1;

    public int Count => count;

    public ReadOnlySpan<double> Hours => hours.AsSpan(0, count);

    public ReadOnlySpan<double> TorquesNm => torquesNm.AsSpan(0, count);

    /// <summary>Takes a slip; one of less than 1 rad says too little.</summary>
    public void Add(double turnedS, double angleRad, double energyJ)
    {
        if (angleRad < LeastRad || seen++ % stride != 0)
        {
            return;
        }

        if (count == Most)
        {
            count = Most / 2;
            for (int k = 0; k < count; k++)
            {
                hours[k] = hours[2 * k];
                torquesNm[k] = torquesNm[2 * k];
            }

            stride *= 2;
        }

        hours[count] = Rounded.Nearest(turnedS / 3600, Rounded.LongZeros);
        torquesNm[count++] = Rounded.Nearest(energyJ / angleRad, Rounded.ShortZeros);
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Count(ref seen);
        cursor.Whole(ref stride, 1, 1L << 56);
        cursor.Index(ref count, 0, Most);
        if (cursor.IsPacked)
        {
            cursor.Rising(hours.AsSpan(0, count), Rounded.LongZeros);
            cursor.Short(torquesNm.AsSpan(0, count), Rounded.ShortZeros);
            return;
        }

        for (int k = 0; k < count; k++)
        {
            cursor.Number(ref hours[k]);
            cursor.Number(ref torquesNm[k]);
            hours[k] = Rounded.Nearest(hours[k], Rounded.LongZeros);
            torquesNm[k] = Rounded.Nearest(torquesNm[k], Rounded.ShortZeros);
        }
    }
}
