namespace Driveline.Torsion;

/// <summary>Polynomials Σ cⱼ·sʲ on s from 0 to 1: values, slopes and bounds that hold over a whole interval.</summary>
/// <remarks>
/// Bound used for exclusion: on [a, a+w] a function differs from its cubic Hermite interpolant by at most w⁴/384 · max|f⁗|,
/// and a cubic lies between its least and greatest Bernstein coefficients. |f⁗| ≤ Σ j(j−1)(j−2)(j−3)|cⱼ| for 0 ≤ s ≤ 1.
/// </remarks>
internal static class Polynomial
{
    // j(j−1)(j−2)(j−3).
    private static readonly double[] FourthFactor =
        Enumerable.Range(0, StepSeries.Stride).Select(j => (double)j * (j - 1) * (j - 2) * (j - 3)).ToArray();

    /// <summary>Work of one evaluation with its slopes.</summary>
    public static long ValueWork(ReadOnlySpan<double> c) => 4 * c.Length;

    public static double Value(ReadOnlySpan<double> c, double s)
    {
        double value = 0;
        for (int j = c.Length - 1; j >= 0; j--)
        {
            value = (value * s) + c[j];
        }

        return value;
    }

    public static double Value(ReadOnlySpan<double> c, double s, out double slope)
    {
        double value = 0;
        double first = 0;
        for (int j = c.Length - 1; j >= 0; j--)
        {
            first = (first * s) + value;
            value = (value * s) + c[j];
        }

        slope = first;
        return value;
    }

    public static double Value(ReadOnlySpan<double> c, double s, out double slope, out double curvature)
    {
        double value = 0;
        double first = 0;
        double half = 0;
        for (int j = c.Length - 1; j >= 0; j--)
        {
            half = (half * s) + first;
            first = (first * s) + value;
            value = (value * s) + c[j];
        }

        slope = first;
        curvature = 2 * half;
        return value;
    }

    /// <summary>Value and slope at s = 1 and a bound on the fourth derivative over 0 ≤ s ≤ 1, in one pass.</summary>
    public static double AtOne(ReadOnlySpan<double> c, out double slope, out double fourth)
    {
        double value = 0;
        double first = 0;
        double bound = 0;
        ReadOnlySpan<double> factor = new ReadOnlySpan<double>(FourthFactor, 0, c.Length);
        for (int j = 0; j < c.Length; j++)
        {
            double term = c[j];
            value += term;
            first += j * term;
            bound += factor[j] * Math.Abs(term);
        }

        slope = first;
        fourth = bound;
        return value;
    }

    /// <summary>Σ|cⱼ|: what the rounding of a value goes by.</summary>
    public static double Size(ReadOnlySpan<double> c)
    {
        double sum = 0;
        for (int j = 0; j < c.Length; j++)
        {
            sum += Math.Abs(c[j]);
        }

        return sum;
    }

    /// <summary>A bound on the third derivative over 0 ≤ s ≤ 1.</summary>
    public static double ThirdBound(ReadOnlySpan<double> c)
    {
        double bound = 0;
        for (int j = 3; j < c.Length; j++)
        {
            bound += j * (j - 1) * (j - 2) * Math.Abs(c[j]);
        }

        return bound;
    }

    /// <summary>An upper bound of f over an interval of width w, from values and slopes at its ends and a bound on |f⁗|.</summary>
    public static double Upper(double left, double leftSlope, double right, double rightSlope, double width, double fourth)
    {
        double third = width / 3;
        double top = Math.Max(Math.Max(left, left + (third * leftSlope)), Math.Max(right, right - (third * rightSlope)));
        double w2 = width * width;
        return top + (w2 * w2 * fourth / 384);
    }

    /// <summary>∫ f ds from 0 to 1.</summary>
    public static double Integral(ReadOnlySpan<double> c)
    {
        double sum = 0;
        for (int j = 0; j < c.Length; j++)
        {
            sum += c[j] / (j + 1);
        }

        return sum;
    }

    /// <summary>∫ s·f ds from 0 to 1.</summary>
    public static double FirstMoment(ReadOnlySpan<double> c)
    {
        double sum = 0;
        for (int j = 0; j < c.Length; j++)
        {
            sum += c[j] / (j + 2);
        }

        return sum;
    }
}
