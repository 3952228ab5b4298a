using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>A published table from hardness of steel to tensile strength.</summary>
internal sealed class HardnessTable
{
    private readonly HardnessRow[] rows;

    internal HardnessTable(string name, string unit, HardnessRow[] rows)
    {
        Name = name;
        Unit = unit;
        this.rows = rows;
    }

    /// <summary>Name of the table.</summary>
    public string Name { get; }

    /// <summary>Unit of its tensile strengths as printed, "MPa" or "ksi".</summary>
    public string Unit { get; }

    /// <summary>Number of its lines.</summary>
    public int RowCount => rows.Length;

    /// <summary>Weakest basis of its lines.</summary>
    public Basis Basis => Basis.Weakest(rows.Select(r => r.Basis));

    internal IReadOnlyList<HardnessRow> Rows => rows;

    /// <summary>Tensile strength at a reading, interpolated between lines; false when the table does not reach it.</summary>
    /// <param name="hardness">The reading.</param>
    /// <param name="tensile">Tensile strength in the unit as printed, with the weaker basis of the two lines; null when false.</param>
    public bool TryTensile(Hardness hardness, [NotNullWhen(true)] out Sourced? tensile)
    {
        Guard.NotNull(hardness, nameof(hardness));
        HardnessRow? below = null;
        HardnessRow? above = null;
        foreach (HardnessRow row in rows)
        {
            double x = row.On(hardness.Scale);
            if (x <= hardness.Value && (below is null || x > below.On(hardness.Scale)))
            {
                below = row;
            }

            if (x >= hardness.Value && (above is null || x < above.On(hardness.Scale)))
            {
                above = row;
            }
        }

        if (below is null || above is null)
        {
            tensile = null;
            return false;
        }

        double from = below.On(hardness.Scale);
        double to = above.On(hardness.Scale);
        double share = to > from ? (hardness.Value - from) / (to - from) : 0;
        tensile = new Sourced(
            below.Tensile + (share * (above.Tensile - below.Tensile)),
            Unit,
            Basis.Weakest(below.Basis, above.Basis));
        return true;
    }

    /// <summary>This table with the lines of another, in the same unit, where it does not reach on a scale.</summary>
    internal HardnessTable ContinuedBy(HardnessTable other, HardnessScale scale)
    {
        _ = TryRange(scale, out double low, out double high);
        return new HardnessTable(Name, Unit, [.. rows, .. other.rows.Where(r => r.On(scale) < low || r.On(scale) > high)]);
    }

    internal bool TryRange(HardnessScale scale, out double low, out double high)
    {
        low = double.PositiveInfinity;
        high = double.NegativeInfinity;
        foreach (HardnessRow row in rows)
        {
            double x = row.On(scale);
            if (!double.IsNaN(x))
            {
                low = Math.Min(low, x);
                high = Math.Max(high, x);
            }
        }

        return high >= low;
    }
}
