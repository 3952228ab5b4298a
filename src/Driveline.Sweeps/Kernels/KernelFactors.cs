using Driveline.Cases.Members;
using Driveline.Sweeps.Factors;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Kernels;

/// <summary>The factors of a study of one device: variables within a box, and lists, of which each combination has its device.</summary>
internal sealed class KernelFactors
{
    private readonly IReadOnlyList<Factor> factors;
    private readonly int[] lists;
    private readonly double[] low;
    private readonly double[] high;

    /// <param name="factors">The factors.</param>
    /// <param name="targets">Where in the case they are.</param>
    /// <param name="tail">Share of the rows beyond each side of the box, of a distribution without ends.</param>
    public KernelFactors(IReadOnlyList<Factor> factors, IReadOnlyList<CaseTarget> targets, double tail)
    {
        this.factors = factors;
        Variables = [.. Enumerable.Range(0, factors.Count).Where(k => factors[k].Distribution.Levels == 0)];
        lists = [.. Enumerable.Range(0, factors.Count).Where(k => factors[k].Distribution.Levels > 0)];
        Members = [.. Variables.Select(k => targets[k].Member)];
        low = [.. Variables.Select(k => factors[k].Distribution).Select(d => d.HasEnds ? d.Low : d.Quantile(tail))];
        high = [.. Variables.Select(k => factors[k].Distribution).Select(d => d.HasEnds ? d.High : d.Quantile(1 - tail))];
        Combinations = lists.Aggregate(1L, (product, k) => Math.Min(product * factors[k].Distribution.Levels, int.MaxValue));
    }

    /// <summary>Places of the factors that are variables.</summary>
    public int[] Variables { get; }

    /// <summary>The facts that they are.</summary>
    public Member[] Members { get; }

    /// <summary>Number of combinations of the lists.</summary>
    public long Combinations { get; }

    /// <summary>Number of corners of the box.</summary>
    public int Corners => 1 << Variables.Length;

    /// <summary>True when a distribution has no ends, so that another tail gives another box.</summary>
    public static bool HaveTails(IReadOnlyList<Factor> factors) => factors.Any(f => !f.Distribution.HasEnds);

    /// <summary>One row: a combination of the lists and a corner of the box.</summary>
    public double[][] Row(int combination, int corner)
    {
        var row = new double[factors.Count][];
        foreach (int list in lists)
        {
            int levels = factors[list].Distribution.Levels;
            row[list] = [((ListDistribution)factors[list].Distribution).ValueAt(combination % levels)];
            combination /= levels;
        }

        for (int v = 0; v < Variables.Length; v++)
        {
            row[Variables[v]] = [(corner >> v & 1) == 0 ? low[v] : high[v]];
        }

        return row;
    }

    /// <summary>The combination of a row.</summary>
    public int CombinationOf(double[][] columns, int row)
    {
        int combination = 0;
        int stride = 1;
        foreach (int list in lists)
        {
            combination += stride * ((ListDistribution)factors[list].Distribution).PlaceOf(columns[list][row]);
            stride *= factors[list].Distribution.Levels;
        }

        return combination;
    }

    /// <summary>The variables of a row; false when it lies outside the box.</summary>
    public bool TryRead(double[][] columns, int row, Span<double> variables)
    {
        bool isInside = true;
        for (int v = 0; v < variables.Length; v++)
        {
            double value = variables[v] = columns[Variables[v]][row];
            isInside &= value >= low[v] && value <= high[v];
        }

        return isInside;
    }

    /// <summary>True when every value of a column of the only variable lies in the box.</summary>
    public bool HoldsAll(ReadOnlySpan<double> column)
    {
        bool isInside = true;
        foreach (double value in column)
        {
            isInside &= value >= low[0] && value <= high[0];
        }

        return isInside;
    }
}
