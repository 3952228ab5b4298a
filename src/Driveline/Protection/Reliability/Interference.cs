using Driveline.Provenance;
using Driveline.Quantities;
using MathNet.Numerics.Integration;

namespace Driveline.Protection;

/// <summary>Probability that a load reaches a strength when both scatter and are independent.</summary>
/// <remarks>
/// P = ∫ f_S(s) · P(L ≥ s) ds, by Gauss–Legendre quadrature between the breaks of both distributions; a tie counts as reached,
/// which is the worse outcome in both uses: load = work peak and strength = trip torque (the device acts in work), and
/// load = trip torque and strength = damage torque (the part goes first). A share without an upper bound ties with another.
/// Several peaks on one fitted bolt share its strength: P_n = ∫ f_S(s) · [1 − P(L &lt; s)ⁿ] ds, which is less than 1 − (1 − P)ⁿ.
/// Source: load–strength interference as taught in reliability engineering (Kapur and Lamberson 1977, ch. 6, from memory).
/// </remarks>
internal static class Interference
{
    private const int Order = 64;

    private static readonly GaussLegendreRule Rule = new(0, 1, Order);

    /// <summary>Probability that one load reaches one strength.</summary>
    public static Probability Of(Distribution load, Distribution strength) =>
        new(Reached(load, strength),
            Basis.Weakest(Guard.NotNull(load, nameof(load)).Basis, Guard.NotNull(strength, nameof(strength)).Basis));

    /// <summary>Probability that at least one of several independent loads reaches one and the same strength.</summary>
    /// <param name="load">One load.</param>
    /// <param name="strength">The strength all of them share.</param>
    /// <param name="loads">How many loads; 0 or more.</param>
    public static Probability Of(Distribution load, Distribution strength, long loads)
    {
        Guard.NotNull(load, nameof(load));
        Guard.NotNull(strength, nameof(strength));
        double n = Guard.NotNegative(loads, "Number of loads", string.Empty, nameof(loads));
        StrengthNode[] nodes = Nodes(load, strength);
        double p = 0;
        foreach (StrengthNode node in nodes)
        {
            p += node.Weight * OneMinusExp(n * MinusLogOneMinus(node.Reached));
        }

        return new Probability(p, Basis.Weakest(load.Basis, strength.Basis));
    }

    internal static double Reached(Distribution load, Distribution strength)
    {
        Guard.NotNull(load, nameof(load));
        Guard.NotNull(strength, nameof(strength));
        double p = 0;
        foreach (StrengthNode node in Nodes(load, strength))
        {
            p += node.Weight * node.Reached;
        }

        return p;
    }

    /// <summary>The strength as weighted points, each with the probability that one load reaches it; the weights add to 1.</summary>
    internal static StrengthNode[] Nodes(Distribution load, Distribution strength)
    {
        var nodes = new List<StrengthNode>();
        double sum = 0;
        Points(strength, [load], (s, weight) =>
        {
            nodes.Add(new StrengthNode(weight, Math.Min(1, load.AtLeast(s))));
            sum += weight;
        });

        // What the quadrature misses of the continuous part (below 1e-9) is given back in proportion.
        double continuous = 1 - strength.AtomShare - strength.UnboundedShare;
        if (sum > 0)
        {
            for (int k = 0; k < nodes.Count; k++)
            {
                nodes[k] = new StrengthNode(nodes[k].Weight * continuous / sum, nodes[k].Reached);
            }
        }

        if (strength.AtomShare > 0)
        {
            nodes.Add(new StrengthNode(strength.AtomShare, Math.Min(1, load.AtLeast(strength.Atom))));
        }

        if (strength.UnboundedShare > 0)
        {
            nodes.Add(new StrengthNode(strength.UnboundedShare, load.UnboundedShare));
        }

        return [.. nodes];
    }

    /// <summary>Visits the continuous part of a distribution as points with weights, split where any of the others has a break.</summary>
    internal static void Points(Distribution of, IReadOnlyList<Distribution> others, Action<double, double> visit)
    {
        IReadOnlyList<double> own = of.Breaks;
        if (own.Count < 2)
        {
            return;
        }

        double first = own[0];
        double last = own[own.Count - 1];
        var cuts = new SortedSet<double>(own);
        foreach (Distribution other in others)
        {
            foreach (double cut in other.Breaks.Where(b => b > first && b < last))
            {
                cuts.Add(cut);
            }

            if (other.Atom > first && other.Atom < last)
            {
                cuts.Add(other.Atom);
            }
        }

        double from = double.NaN;
        foreach (double to in cuts)
        {
            if (to > from)
            {
                // s = a + (b − a) t² (3 − 2t) takes the edge off a density that ends in a fractional power.
                for (int k = 0; k < Order; k++)
                {
                    double t = Rule.GetAbscissa(k);
                    double s = from + ((to - from) * t * t * (3 - (2 * t)));
                    double weight = Rule.GetWeight(k) * (to - from) * 6 * t * (1 - t) * of.Density(s);
                    if (weight > 0)
                    {
                        visit(s, weight);
                    }
                }
            }

            from = to;
        }
    }

    /// <summary>1 − exp(−y), exact for small y; 1 for +∞.</summary>
    internal static double OneMinusExp(double y) => y < 1e-5 ? y * (1 - (y / 2 * (1 - (y / 3)))) : 1 - Math.Exp(-y);

    private static double MinusLogOneMinus(double q) =>
        q < 1e-5 ? q * (1 + (q / 2) + (q * q / 3)) : q >= 1 ? double.PositiveInfinity : -Math.Log(1 - q);
}
