namespace Driveline.Protection;

/// <summary>Exact bounds of the mean of a Poisson count, from one count.</summary>
/// <remarks>
/// Upper bound m at level 0.95: P(N ≤ k | m) = 0.05, the 0.95 quantile of Gamma(k + 1); lower bound: P(N ≥ k | m) = 0.05, the 0.05 quantile
/// of Gamma(k). For k = 0 the upper bound is −ln 0.05 = 2.9957. Garwood, Fiducial limits for the Poisson distribution, Biometrika 28
/// (1936),
/// 437–442. At least 95 % in every case, since counts are whole.
/// </remarks>
internal static class PoissonRate
{
    private const double Level = 0.05;

    /// <summary>The upper 95 % bound of the mean, one-sided.</summary>
    public static double MostMean(int count) => count == 0 ? -Math.Log(Level) : MeanAt(count, Level);

    /// <summary>The lower 95 % bound of the mean, one-sided; 0 of no event.</summary>
    public static double LeastMean(int count) => count == 0 ? 0 : count == 1 ? -Math.Log(1 - Level) : MeanAt(count - 1, 1 - Level);

    // The mean at which at most so many events have that chance; the chance falls as the mean rises.
    private static double MeanAt(int count, double chance)
    {
        double low = 0;
        double high = count + 10 + (5 * Math.Sqrt(count + 1));
        for (int step = 0; step < 200 && high - low > 1e-12 * high; step++)
        {
            double middle = (low + high) / 2;
            if (AtMost(count, middle) > chance)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }

    // P(N ≤ k | m) = e^−m Σ mⁱ/i!, each term scaled by the last one, so that no power of a large mean overflows.
    private static double AtMost(int count, double mean)
    {
        double sum = 1;
        double term = 1;
        double logLast = -mean;
        for (int i = count; i > 0; i--)
        {
            term *= i / mean;
            sum += term;
            logLast += Math.Log(mean / i);
        }

        return double.IsPositiveInfinity(sum) ? 1 : Math.Exp(logLast + Math.Log(sum));
    }
}
