namespace Driveline.Torsion;

/// <summary>The largest value of a polynomial over a step, found by bounds and the roots of its slope.</summary>
/// <remarks>
/// Branch and bound: an interval is dropped when its upper bound does not exceed the best value so far (within 1e-15
/// relative, and the rounding of its terms); where f′ has one sign the end decides; where f″ is proved negative the one interior peak is
/// the root of f′.
/// </remarks>
internal static class PeakSearch
{
    /// <summary>Work of one search after which it gives up; see <see cref="RunLog.WorkExhausted"/>.</summary>
    public const long MostWork = 5_000_000;

    private const double LeastWidth = 1.0 / (1 << 26);
    private const double Rounding = 2.3e-16;

    /// <summary>True when neither f nor −f can exceed the best values so far.</summary>
    public static bool CannotRaise(ReadOnlySpan<double> c, double best, double bestReverse)
    {
        double right = Polynomial.AtOne(c, out double rightSlope, out double fourth);
        double slope = c.Length > 1 ? c[1] : 0;
        return Polynomial.Upper(c[0], slope, right, rightSlope, 1, fourth) <= Floor(best)
            && Polynomial.Upper(-c[0], -slope, -right, -rightSlope, 1, fourth) <= Floor(bestReverse);
    }

    /// <summary>Raises <paramref name="best"/> and sets its place when sign·f exceeds it on 0 ≤ s ≤ 1.</summary>
    /// <returns>True when it did.</returns>
    public static bool Raise(ReadOnlySpan<double> c, double sign, ref double best, ref double at)
    {
        long work = 0;
        return Raise(c, sign, ref best, ref at, ref work);
    }

    /// <summary>The same, adding what the search costs.</summary>
    public static bool Raise(ReadOnlySpan<double> c, double sign, ref double best, ref double at, ref long work)
    {
        double right = Polynomial.AtOne(c, out double rightSlope, out double fourth);
        double left = sign * c[0];
        double leftSlope = c.Length > 1 ? sign * c[1] : 0;
        if (Polynomial.Upper(left, leftSlope, sign * right, sign * rightSlope, 1, fourth) <= Floor(best))
        {
            return false;
        }

        double before = best;
        double noise = Rounding * Polynomial.Size(c);
        Take(left, 0, ref best, ref at);
        Take(sign * right, 1, ref best, ref at);
        Descend(c, sign, 0, left, leftSlope, 1, sign * right, sign * rightSlope, fourth, Polynomial.ThirdBound(c), noise, ref best, ref at,
            ref work);
        return best > before;
    }

    private static void Descend(
        ReadOnlySpan<double> c,
        double sign,
        double a,
        double fa,
        double da,
        double b,
        double fb,
        double db,
        double fourth,
        double third,
        double noise,
        ref double best,
        ref double at,
        ref long work)
    {
        work += Polynomial.ValueWork(c);
        double width = b - a;
        if (Polynomial.Upper(fa, da, fb, db, width, fourth) <= Floor(best) + noise || width <= LeastWidth || work > MostWork)
        {
            return;
        }

        double wiggle = width * width * third / 8;
        if (Math.Min(da, db) > wiggle || Math.Max(da, db) < -wiggle)
        {
            return;
        }

        if (da > 0 && db < 0 && IsConcave(c, sign, a, b, fourth))
        {
            double s = PeakBetween(c, sign, a, b, ref work);
            Take(sign * Polynomial.Value(c, s), s, ref best, ref at);
            return;
        }

        double m = 0.5 * (a + b);
        double fm = sign * Polynomial.Value(c, m, out double dm);
        dm *= sign;
        Take(fm, m, ref best, ref at);
        Descend(c, sign, a, fa, da, m, fm, dm, fourth, third, noise, ref best, ref at, ref work);
        Descend(c, sign, m, fm, dm, b, fb, db, fourth, third, noise, ref best, ref at, ref work);
    }

    private static bool IsConcave(ReadOnlySpan<double> c, double sign, double a, double b, double fourth)
    {
        Polynomial.Value(c, a, out _, out double ca);
        Polynomial.Value(c, b, out _, out double cb);
        double width = b - a;
        return Math.Max(sign * ca, sign * cb) + (width * width * fourth / 8) < 0;
    }

    // Newton steps on f', kept inside the bracket.
    private static double PeakBetween(ReadOnlySpan<double> c, double sign, double from, double to, ref long work)
    {
        double s = 0.5 * (from + to);
        for (int i = 0; i < 60; i++)
        {
            work += Polynomial.ValueWork(c);
            Polynomial.Value(c, s, out double slope, out double curvature);
            if (sign * slope > 0)
            {
                from = s;
            }
            else
            {
                to = s;
            }

            double next = s - (slope / curvature);
            if (!(next >= from && next <= to))
            {
                next = 0.5 * (from + to);
            }

            if (Math.Abs(next - s) <= 1e-15)
            {
                return next;
            }

            s = next;
        }

        return s;
    }

    private static double Floor(double best) => best + (1e-15 * Math.Abs(best));

    private static void Take(double value, double s, ref double best, ref double at)
    {
        if (value > best)
        {
            best = value;
            at = s;
        }
    }
}
