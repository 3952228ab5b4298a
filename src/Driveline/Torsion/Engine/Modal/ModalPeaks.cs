namespace Driveline.Torsion;

/// <summary>The largest value of a track over an interval in which fast modes ride on slow ones.</summary>
/// <remarks>
/// Branch and bound: an interval whose bound is below the best value so far is dropped, another is halved, the half first toward which
/// the motion without its swings and their size rise together; where nothing fast is left the polynomial decides. A swing that comes
/// again as high as the best within 1e-12 of itself is dropped too.
/// </remarks>
internal sealed class ModalPeaks
{
    private const int MostDepth = 60;
    private const double Again = 1e-12;

    private readonly ModalInterval interval = new();
    private readonly double[] input;
    private double[][] middles = [];
    private ModalMotion motion = null!;
    private RunLog log = null!;
    private Track track;
    private double sign;
    private double best;
    private double bestAt;

    public ModalPeaks(int most) => input = new double[most];

    /// <summary>Searches the interval for a value above the highest, and for one below the negative of the other.</summary>
    public void Search(
        ModalMotion of,
        in Track tracked,
        double from,
        double length,
        double[] left,
        double[] right,
        RunLog into,
        double start,
        double most,
        double least)
    {
        motion = of;
        log = into;
        track = tracked;
        Fit(of.System.Width);
        for (int way = 1; way >= -1; way -= 2)
        {
            sign = way;
            bestAt = double.NaN;
            best = way > 0 ? most : least;
            Visit(0, from, length, left, right);
            if (!double.IsNaN(bestAt))
            {
                log.Raise(track, way, best, start + bestAt);
            }
        }
    }

    private void Fit(int width)
    {
        interval.Fit(width);
        if (middles.Length > 0 && middles[0].Length >= width)
        {
            return;
        }

        middles = new double[MostDepth][];
        for (int n = 0; n < MostDepth; n++)
        {
            middles[n] = new double[width];
        }
    }

    private void Visit(int depth, double from, double length, double[] left, double[] right)
    {
        interval.Set(motion, from, length, left, right);
        TrackSpan span = interval.Look(track, 0, 0);
        log.Work += 10 + (12 * motion.System.Width);
        log.WorkExhausted |= log.Work > log.MostWork;
        double upper = sign > 0 ? span.Highest : -span.Lowest;
        if (upper <= best + (1e-15 * Math.Abs(best)) + (Again * span.Ripple) || log.WorkExhausted)
        {
            return;
        }

        if (span.IsMonotone)
        {
            Take(sign * span.AtLeft, from);
            Take(sign * span.AtRight, from + length);
            return;
        }

        if (span.Ripple == 0 || depth == MostDepth)
        {
            Leaf(from, length);
            return;
        }

        ModalSystem system = motion.System;
        ModalStep step = system.Level(system.LevelWithin(0.75 * length));
        double[] middle = middles[depth];
        motion.InputAt(from, input);
        step.Advance(left.AsSpan(0, system.Width), input, motion.InputRate, middle);
        double at = from + step.Length;
        Take(sign * (motion.At(track.Row, at) + ModalSystem.Dot(system.Row(track.Row), middle)), at);
        if ((sign * span.SlopeAt(step.Length / length)) + span.RippleEnd - span.Ripple <= 0)
        {
            Visit(depth + 1, from, step.Length, left, middle);
            Visit(depth + 1, at, length - step.Length, middle, right);
        }
        else
        {
            Visit(depth + 1, at, length - step.Length, middle, right);
            Visit(depth + 1, from, step.Length, left, middle);
        }
    }

    private void Take(double value, double time)
    {
        if (value > best)
        {
            best = value;
            bestAt = time;
        }
    }

    private void Leaf(double from, double length)
    {
        double at = 0;
        long work = 0;
        log.Steps++;
        ReadOnlySpan<double> series = interval.Series(track, 0);
        if (PeakSearch.Raise(series, sign, ref best, ref at, ref work))
        {
            bestAt = from + (at * length);
        }

        log.Work += work + (series.Length * (8L + (4 * motion.System.Width)));
    }
}
