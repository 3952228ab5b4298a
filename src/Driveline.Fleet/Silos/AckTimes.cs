namespace Driveline.Fleet.Silos;

/// <summary>How long acknowledgements took: counts in classes of a quarter of an octave from 1 µs on. Thread-safe.</summary>
internal sealed class AckTimes
{
    private const int PerOctave = 4;
    private const int Classes = 26 * PerOctave;

    private readonly long[] counts = new long[Classes];

    public void Add(TimeSpan time)
    {
        double octaves = Math.Log2(Math.Max(1, time.TotalMicroseconds));
        Interlocked.Increment(ref counts[Math.Min(Classes - 1, (int)(octaves * PerOctave))]);
    }

    /// <summary>The time that a share of them did not exceed, ms, to a fifth; NaN before the first.</summary>
    public double Quantile(double share)
    {
        long[] now = [.. counts];
        double left = share * now.Sum();
        for (int k = 0; k < now.Length; k++)
        {
            left -= now[k];
            if (left <= 0 && now[k] > 0)
            {
                return Math.Pow(2, (k + 1.0) / PerOctave) / 1000;
            }
        }

        return double.NaN;
    }
}
