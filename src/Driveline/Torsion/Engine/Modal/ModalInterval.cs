namespace Driveline.Torsion;

/// <summary>The modes over one interval of a stretch, parted into slow ones, followed closely, and fast ones, bounded by size.</summary>
/// <remarks>
/// A mode is slow when |λ|·L is at most <see cref="SlowReach"/>: over the interval it is a polynomial to rounding, and bounded
/// by the cubic through its ends. A fast one is its motion without swings, which is linear in time, and a swing that never grows.
/// </remarks>
internal sealed partial class ModalInterval
{
    /// <summary>Radians over an interval up to which a mode is followed closely.</summary>
    public const double SlowReach = 2.5;

    // A swing smaller than this part of what it rides on is rounding.
    private const double Rounding = 1e-16;

    private readonly double[] coefficients = new double[StepSeries.MaxDegree + 2];
    private double[] left = [];
    private double[] leftRate = [];
    private double[] right = [];
    private double[] rightRate = [];
    private double[] fourth = [];
    private double[] third = [];
    private double[] swing = [];
    private double[] swingEnd = [];
    private double[] leftSwing = [];
    private double[] rightSwing = [];
    private double[] terms = [];
    private ModalMotion motion = null!;
    private ModalSystem system = null!;
    private int degree;
    private bool hasTerms;

    public double From { get; private set; }

    public double Length { get; private set; }

    public void Fit(int width)
    {
        if (left.Length < width)
        {
            left = new double[width];
            leftRate = new double[width];
            right = new double[width];
            rightRate = new double[width];
            leftSwing = new double[width];
            rightSwing = new double[width];
            fourth = new double[width / 2];
            third = new double[width / 2];
            swing = new double[width / 2];
            swingEnd = new double[width / 2];
            terms = new double[width * (StepSeries.MaxDegree + 1)];
        }
    }

    public void Set(ModalMotion of, double from, double length, ReadOnlySpan<double> atLeft, ReadOnlySpan<double> atRight)
    {
        motion = of;
        system = of.System;
        From = from;
        Length = length;
        hasTerms = false;
        double l3 = length * length * length;
        for (int k = 0, n = 0; k < system.Modes; k++, n += 2)
        {
            double size = system.Size[k];
            if (size * length > SlowReach)
            {
                Fast(k, n, atLeft, atRight);
                continue;
            }

            double re = system.Re[k];
            double im = system.Im[k];
            double g = of.Input[n] + (of.InputRate[n] * from);
            double f = of.Input[n + 1] + (of.InputRate[n + 1] * from);
            double a = (re * atLeft[n]) - (im * atLeft[n + 1]) + g;
            double b = (re * atLeft[n + 1]) + (im * atLeft[n]) + f;
            left[n] = atLeft[n];
            left[n + 1] = atLeft[n + 1];
            leftRate[n] = a * length;
            leftRate[n + 1] = b * length;
            right[n] = atRight[n];
            right[n + 1] = atRight[n + 1];
            rightRate[n] = length * ((re * atRight[n]) - (im * atRight[n + 1]) + g + (of.InputRate[n] * length));
            rightRate[n + 1] = length * ((re * atRight[n + 1]) + (im * atRight[n]) + f + (of.InputRate[n + 1] * length));
            double c = (re * a) - (im * b) + of.InputRate[n];
            double d = (re * b) + (im * a) + of.InputRate[n + 1];
            third[k] = l3 * size * Math.Sqrt((c * c) + (d * d));
            fourth[k] = third[k] * size * length;
            swing[k] = swingEnd[k] = 0;
            leftSwing[n] = leftSwing[n + 1] = rightSwing[n] = rightSwing[n + 1] = 0;
        }
    }

    /// <summary>The track over the interval.</summary>
    public TrackSpan Look(in Track track, double travelled, double travelledEnd)
    {
        ReadOnlySpan<double> row = system.Row(track.Row);
        ReadOnlySpan<double> sizes = system.RowSizes.AsSpan(track.Row * system.Modes, system.Modes);
        double a = motion.Offset[track.Row] + (motion.OffsetRate[track.Row] * From);
        double b = motion.OffsetRate[track.Row] * Length;
        double l = 0;
        double ls = 0;
        double r = 0;
        double rs = 0;
        for (int n = 0; n < row.Length; n++)
        {
            l += row[n] * left[n];
            ls += row[n] * leftRate[n];
            r += row[n] * right[n];
            rs += row[n] * rightRate[n];
        }

        if (track.IsTravel)
        {
            return Travel(track, row, sizes, a + l, a + b + r, travelled, travelledEnd);
        }

        double slow = 0;
        double fast = 0;
        double fastEnd = 0;
        for (int k = 0; k < sizes.Length; k++)
        {
            slow += sizes[k] * fourth[k];
            fast += sizes[k] * swing[k];
            fastEnd += sizes[k] * swingEnd[k];
        }

        var span = new TrackSpan
        {
            Left = a + l,
            LeftSlope = b + ls,
            Right = a + b + r,
            RightSlope = b + rs,
            Fourth = slow,
            AtLeft = a + l,
            AtRight = a + b + r,
        };
        if (fast > Rounding * Math.Max(track.Scale, Math.Max(Math.Abs(span.Left), Math.Abs(span.Right))))
        {
            span.Ripple = fast;
            span.RippleEnd = fastEnd;
            span.AtLeft += ModalSystem.Dot(row, leftSwing);
            span.AtRight += ModalSystem.Dot(row, rightSwing);
        }

        return span;
    }

    private TrackSpan Travel(
        in Track track, ReadOnlySpan<double> row, ReadOnlySpan<double> sizes, double rate, double endRate, double travelled, double end)
    {
        double l = 0;
        double r = 0;
        double slow = 0;
        double fast = 0;
        for (int k = 0, n = 0; k < sizes.Length; k++, n += 2)
        {
            slow += sizes[k] * third[k] * Length;
            if (swing[k] > 0)
            {
                fast += sizes[k] * swing[k] / system.Size[k];
                l += OverRate(k, row, leftSwing, n);
                r += OverRate(k, row, rightSwing, n);
            }
        }

        double ripple = fast > Rounding * track.Scale ? fast : 0;
        return new TrackSpan
        {
            Left = travelled - l,
            LeftSlope = rate * Length,
            Right = end - r,
            RightSlope = endRate * Length,
            Fourth = slow,
            AtLeft = travelled,
            AtRight = end,
            Ripple = ripple,
        };
    }

    // Re(C·h/λ).
    private double OverRate(int k, ReadOnlySpan<double> row, double[] of, int n)
    {
        double a = (row[n] * of[n]) + (row[n + 1] * of[n + 1]);
        double b = (row[n] * of[n + 1]) - (row[n + 1] * of[n]);
        return ((a * system.Re[k]) + (b * system.Im[k])) / (system.Size[k] * system.Size[k]);
    }

    private void Fast(int k, int n, ReadOnlySpan<double> atLeft, ReadOnlySpan<double> atRight)
    {
        for (int c = n; c < n + 2; c++)
        {
            left[c] = motion.Steady[c] + (motion.SteadyRate[c] * From);
            right[c] = left[c] + (motion.SteadyRate[c] * Length);
            leftRate[c] = rightRate[c] = motion.SteadyRate[c] * Length;
            leftSwing[c] = atLeft[c] - left[c];
            rightSwing[c] = atRight[c] - right[c];
        }

        third[k] = fourth[k] = 0;
        swing[k] = Math.Sqrt((leftSwing[n] * leftSwing[n]) + (leftSwing[n + 1] * leftSwing[n + 1]));
        swingEnd[k] = Math.Sqrt((rightSwing[n] * rightSwing[n]) + (rightSwing[n + 1] * rightSwing[n + 1]));
    }
}
