namespace Driveline.Loads;

/// <summary>Lowest natural frequency above 0 of a line of lumps, all couplings holding.</summary>
/// <remarks>
/// By counting: eliminated from one end, K − λM has as many negative pivots as there are frequencies below √λ (Sylvester). The
/// pivot behind a spring k is D' = k·D/(k + D) − λJ; no stiffnesses are subtracted, so the lowest is as good as the highest.
/// </remarks>
internal static class SlowestSwing
{
    private const double LeastRadPerS = 1e-3;
    private const int MostOnStack = 64;

    /// <summary>In rad/s; +∞ when nothing swings.</summary>
    public static double RadPerS(IReadOnlyList<Lump> lumps, IReadOnlyList<LineLink> links)
    {
        bool isSmall = lumps.Count <= MostOnStack;
        Span<double> inertias = isSmall ? stackalloc double[lumps.Count] : new double[lumps.Count];
        Span<double> springs = isSmall ? stackalloc double[lumps.Count] : new double[lumps.Count];
        inertias[0] = lumps[0].InertiaKgM2;
        int count = 0;
        double highest = 0;
        for (int l = 0; l < links.Count; l++)
        {
            if (links[l].Compliance == 0)
            {
                inertias[count] += lumps[l + 1].InertiaKgM2;
                continue;
            }

            springs[count++] = 1 / links[l].Compliance;
            inertias[count] = lumps[l + 1].InertiaKgM2;
        }

        ReadOnlySpan<double> inertia = inertias.Slice(0, count + 1);
        ReadOnlySpan<double> stiffness = springs.Slice(0, count);
        for (int l = 0; l < stiffness.Length; l++)
        {
            highest = Math.Max(highest, 4 * stiffness[l] * ((1 / inertia[l]) + (1 / inertia[l + 1])));
        }

        double low = LeastRadPerS * LeastRadPerS;
        int below = Below(low, inertia, stiffness);
        if (highest <= low || Below(highest, inertia, stiffness) <= below)
        {
            return double.PositiveInfinity;
        }

        double high = highest;
        while (high > low * (1 + 1e-15))
        {
            double middle = Math.Sqrt(low) * Math.Sqrt(high);
            if (middle <= low || middle >= high)
            {
                break;
            }

            if (Below(middle, inertia, stiffness) > below)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return Math.Sqrt(high);
    }

    private static int Below(double lambda, ReadOnlySpan<double> inertia, ReadOnlySpan<double> stiffness)
    {
        int count = 0;
        double before = 0;
        for (int k = 0; k < inertia.Length; k++)
        {
            bool isHeld = double.IsPositiveInfinity(inertia[k]);
            double own = isHeld ? double.PositiveInfinity : before - (lambda * inertia[k]);
            double spring = k < stiffness.Length ? stiffness[k] : 0;
            double pivot = own + spring;
            count += pivot < 0 ? 1 : 0;
            before = isHeld ? spring : pivot == 0 ? double.NegativeInfinity : spring * own / pivot;
        }

        return count;
    }
}
