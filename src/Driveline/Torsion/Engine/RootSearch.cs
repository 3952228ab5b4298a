namespace Driveline.Torsion;

/// <summary>The first place where a polynomial rises through zero; never stepped over.</summary>
/// <remarks>
/// Guarantee: intervals are dropped only when a bound that holds over the whole interval shows that f stays at or below
/// zero, and a root is solved for only where the slope is proved positive (chord of f′ less w²/8·max|f‴|). Otherwise the
/// interval is halved. At a width of 2⁻⁴⁰ of a step a crossing shorter than that is taken as none: a graze within rounding.
/// </remarks>
internal static class RootSearch
{
    private const double LeastWidth = 1.0 / (1L << 40);

    /// <summary>First s in (from, to] where f rises through zero, given f(from) ≤ 0; NaN when there is none.</summary>
    public static double FirstRise(ReadOnlySpan<double> c, double from, double to)
    {
        long work = 0;
        return FirstRise(c, from, to, ref work);
    }

    /// <summary>The same, adding what the search costs.</summary>
    public static double FirstRise(ReadOnlySpan<double> c, double from, double to, ref long work)
    {
        double right = Polynomial.AtOne(c, out double rightSlope, out double fourth);
        if (to < 1)
        {
            right = Polynomial.Value(c, to, out rightSlope);
        }

        double left = c[0];
        double leftSlope = c.Length > 1 ? c[1] : 0;
        if (from > 0)
        {
            left = Polynomial.Value(c, from, out leftSlope);
        }

        return Polynomial.Upper(left, leftSlope, right, rightSlope, to - from, fourth) <= 0
            ? double.NaN
            : Descend(c, from, left, leftSlope, to, right, rightSlope, fourth, Polynomial.ThirdBound(c), ref work);
    }

    /// <summary>The root of an f that rises from f(from) ≤ 0 to f(to) ≥ 0, by Newton steps kept inside the bracket.</summary>
    public static double Solve(ReadOnlySpan<double> c, double from, double to, ref long work)
    {
        double s = 0.5 * (from + to);
        for (int i = 0; i < 100; i++)
        {
            work += Polynomial.ValueWork(c);
            double f = Polynomial.Value(c, s, out double slope);
            if (f > 0)
            {
                to = s;
            }
            else
            {
                from = s;
            }

            double next = s - (f / slope);
            if (!(next >= from && next <= to))
            {
                next = 0.5 * (from + to);
            }

            if (Math.Abs(next - s) <= 1e-16)
            {
                return next;
            }

            s = next;
        }

        return s;
    }

    private static double Descend(
        ReadOnlySpan<double> c, double a, double fa, double da, double b, double fb, double db, double fourth, double third, ref long work)
    {
        work += Polynomial.ValueWork(c);
        double width = b - a;
        if (Polynomial.Upper(fa, da, fb, db, width, fourth) <= 0 || work > PeakSearch.MostWork)
        {
            return double.NaN;
        }

        if (Math.Min(da, db) - (width * width * third / 8) > 0)
        {
            return fb > 0 ? Solve(c, a, b, ref work) : double.NaN;
        }

        if (width <= LeastWidth)
        {
            return fb > 0 ? b : double.NaN;
        }

        double m = 0.5 * (a + b);
        double fm = Polynomial.Value(c, m, out double dm);
        double root = Descend(c, a, fa, da, m, fm, dm, fourth, third, ref work);
        return !double.IsNaN(root) || fm > 0 ? root : Descend(c, m, fm, dm, b, fb, db, fourth, third, ref work);
    }
}
