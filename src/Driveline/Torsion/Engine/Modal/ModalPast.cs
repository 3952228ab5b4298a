namespace Driveline.Torsion;

/// <summary>Intervals of a stretch in which a largest value may lie, kept until the end of the stretch is known.</summary>
/// <remarks>
/// What grows up to an event is largest there, so that most intervals are never opened: only one whose bound exceeds what is kept and
/// every value at the ends of intervals. They are opened in the order of time: of equal peaks the first is kept.
/// </remarks>
internal sealed class ModalPast
{
    private const int Most = 32;
    private const double Again = 2e-12;

    // Radians of a step of level 1.
    private const double Stride = 2;

    private readonly ModalInterval interval = new();
    private readonly ModalPeaks peaks;
    private readonly double[] from = new double[Most];
    private readonly double[] length = new double[Most];
    private readonly double[][] left = new double[Most][];
    private readonly double[][] right = new double[Most][];
    private readonly TrackSpan[][] spans = new TrackSpan[Most][];
    private readonly double[] floor;
    private readonly int width;
    private readonly double[] input;
    private double[] here;
    private double[] there;
    private int count;

    public ModalPast(int most, int tracks)
    {
        width = most;
        input = new double[most];
        here = new double[most];
        there = new double[most];
        floor = new double[2 * tracks];
        peaks = new ModalPeaks(most);
        interval.Fit(most);
    }

    /// <summary>True when there is no room for another interval.</summary>
    public bool IsFull => count == Most;

    public void Clear() => count = 0;

    /// <summary>Keeps an interval that the tracks have looked at, with the modes at its ends.</summary>
    public void Add(ModalInterval of, ModalTracks tracks, double[] atLeft, double[] atRight)
    {
        from[count] = of.From;
        length[count] = of.Length;
        Copy(left, atLeft);
        Copy(right, atRight);
        if (spans[count] is null)
        {
            spans[count] = new TrackSpan[floor.Length / 2];
        }

        tracks.CopySpans(spans[count]);
        count++;
    }

    /// <summary>Raises the largest values kept by those of the intervals, up to a time at which the modes are as given.</summary>
    public void Settle(ModalMotion motion, ModalTracks tracks, double[] end, double until, double start, RunLog log)
    {
        for (int t = 0; t < tracks.Count && count > 0; t++)
        {
            ref readonly Track track = ref tracks.At(t);
            if (track.Keeps)
            {
                Floor(t, Within(track, until, motion.At(track.Row, until) + ModalSystem.Dot(motion.System.Row(track.Row), end)));
                log.Work += motion.System.Width + (2 * count);
            }
        }

        for (int n = 0; n < count; n++)
        {
            Open(n, motion, tracks, start, log);
        }

        count = 0;
    }

    // The higher of two values at the ends of intervals, less what makes a peak come again.
    private void Floor(int t, double value)
    {
        double most = value;
        double least = -value;
        for (int n = 0; n < count; n++)
        {
            most = Math.Max(most, spans[n][t].AtRight);
            least = Math.Max(least, -spans[n][t].AtRight);
        }

        floor[2 * t] = most - (Again * Math.Abs(most));
        floor[(2 * t) + 1] = least - (Again * Math.Abs(least));
    }

    private void Open(int n, ModalMotion motion, ModalTracks tracks, double start, RunLog log)
    {
        int opened = 0;
        int rippling = 0;
        for (int t = 0; t < tracks.Count; t++)
        {
            bool opens = tracks.At(t).Keeps && MayRaise(t, spans[n][t], tracks, log, out _, out _);
            opened += opens ? 1 : 0;
            rippling += opens && spans[n][t].Ripple > 0 ? 1 : 0;
        }

        if (opened == 0)
        {
            return;
        }

        if (rippling > 0 && IsWalkCheaper(motion.System, length[n], tracks.Count, rippling))
        {
            Walk(n, motion, tracks, start, log);
            return;
        }

        interval.Set(motion, from[n], length[n], left[n], right[n]);
        log.Work += 16L * motion.System.Width;
        for (int t = 0; t < tracks.Count; t++)
        {
            if (tracks.At(t).Keeps)
            {
                Raise(t, spans[n][t], motion, tracks, left[n], right[n], start, log);
            }
        }
    }

    // Short steps serve all tracks at once; a search among ripples serves one.
    private static bool IsWalkCheaper(ModalSystem system, double length, int tracks, int rippling)
    {
        double reach = length * system.Fastest / Stride;
        return reach * StepWork(system, tracks) < 2 * rippling * ((Math.Log(reach) / Math.Log(2)) + 2) * (10 + (12 * system.Width));
    }

    private static long StepWork(ModalSystem system, int tracks) => (16L * system.Width) + (tracks * (20L + (6 * system.Width)));

    private void Walk(int n, ModalMotion motion, ModalTracks tracks, double start, RunLog log)
    {
        ModalSystem system = motion.System;
        ModalStep step = system.Level(1);
        double end = from[n] + length[n];
        double at = from[n];
        Array.Copy(left[n], here, system.Width);
        while (at < end && !log.WorkExhausted)
        {
            bool isLast = end - at <= 1.2 * step.Length;
            double next = isLast ? end : at + step.Length;
            motion.InputAt(at, input);
            step.Advance(here.AsSpan(0, system.Width), input, motion.InputRate, there);
            double[] ahead = isLast ? right[n] : there;
            interval.Set(motion, at, next - at, here, ahead);
            log.Steps++;
            log.Work += StepWork(system, tracks.Count);
            for (int t = 0; t < tracks.Count; t++)
            {
                if (tracks.At(t).Keeps)
                {
                    Raise(t, interval.Look(tracks.At(t), 0, 0), motion, tracks, here, ahead, start, log);
                }
            }

            at = next;
            (here, there) = (there, here);
        }
    }

    private bool MayRaise(int t, in TrackSpan span, ModalTracks tracks, RunLog log, out double most, out double least)
    {
        most = Math.Max(log.Best(tracks.At(t), 1), floor[2 * t]);
        least = Math.Max(log.Best(tracks.At(t), -1), floor[(2 * t) + 1]);
        return span.MayExceed(most, least);
    }

    // Of the interval that is set.
    private void Raise(
        int t, in TrackSpan span, ModalMotion motion, ModalTracks tracks, double[] atLeft, double[] atRight, double start, RunLog log)
    {
        ref readonly Track track = ref tracks.At(t);
        if (!MayRaise(t, span, tracks, log, out double most, out double least))
        {
            return;
        }

        double end = interval.From + interval.Length;
        if (span.IsMonotone)
        {
            double last = Within(track, end, span.AtRight);
            log.Raise(track, 1, last, start + end);
            log.Raise(track, -1, -last, start + end);
        }
        else if (span.Ripple == 0)
        {
            log.Peaks(track, interval.Series(track, 0), start + interval.From, interval.Length, most, least);
            log.Work += 4L * motion.System.Width;
        }
        else
        {
            peaks.Search(motion, track, interval.From, interval.Length, atLeft, atRight, log, start, most, least);
        }
    }

    // No torque exceeds what its link can carry, whatever the rounding.
    private static double Within(in Track track, double at, double value) => Math.Max(
        Math.Min(value, track.Up + (track.UpRate * at)), -(track.Down + (track.DownRate * at)));

    private void Copy(double[][] into, double[] from)
    {
        if (into[count] is null)
        {
            into[count] = new double[width];
        }

        Array.Copy(from, into[count], width);
    }
}
