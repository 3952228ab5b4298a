namespace Driveline.Sweeps.Sampling;

/// <summary>The points of a design in the unit cube, by row. Immutable and safe for several threads; any row can be had at once.</summary>
internal abstract class UnitPoints
{
    protected UnitPoints(int dimensions, long count)
    {
        Dimensions = dimensions;
        Count = count;
    }

    public int Dimensions { get; }

    /// <summary>Number of rows.</summary>
    public long Count { get; }

    /// <summary>Writes rows first to first + count - 1, one column a dimension.</summary>
    public void Fill(long first, int count, double[][] columns) => Fill(first, count, columns, 0);

    /// <summary>The same, from a place of the columns on.</summary>
    public abstract void Fill(long first, int count, double[][] columns, int at);
}
