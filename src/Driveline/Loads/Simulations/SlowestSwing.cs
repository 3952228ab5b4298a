namespace Driveline.Loads;

/// <summary>Lowest natural frequency above 0 of a line of lumps, all couplings holding.</summary>
/// <remarks>
/// By counting: eliminated from one end, K − λM has as many negative pivots as there are frequencies below √λ (Sylvester). The
/// pivot behind a spring k is D' = k·D/(k + D) − λJ; no stiffnesses are subtracted, so the lowest is as good as the highest.
/// </remarks>
internal static class SlowestSwing
{
    private const double LeastRadPerS = 1e-3;

    /// <summary>In rad/s; +∞ when nothing swings.</summary>
    public static double RadPerS(IReadOnlyList<Lump> lumps, IReadOnlyList<LineLink> links)
    {
        var inertia = new List<double> { lumps[0].InertiaKgM2 };
        var stiffness = new List<double>();
        double highest = 0;
        for (int l = 0; l < links.Count; l++)
        {
            if (links[l].Compliance == 0)
            {
                inertia[inertia.Count - 1] += lumps[l + 1].InertiaKgM2;
                continue;
            }

            stiffness.Add(1 / links[l].Compliance);
            inertia.Add(lumps[l + 1].InertiaKgM2);
        }

        for (int l = 0; l < stiffness.Count; l++)
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

    private static int Below(double lambda, List<double> inertia, List<double> stiffness)
    {
        int count = 0;
        double before = 0;
        for (int k = 0; k < inertia.Count; k++)
        {
            bool isHeld = double.IsPositiveInfinity(inertia[k]);
            double own = isHeld ? double.PositiveInfinity : before - (lambda * inertia[k]);
            double spring = k < stiffness.Count ? stiffness[k] : 0;
            double pivot = own + spring;
            count += pivot < 0 ? 1 : 0;
            before = isHeld ? spring : pivot == 0 ? double.NegativeInfinity : spring * own / pivot;
        }

        return count;
    }
}
