using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>
/// Columns of consecutive rows: one span a factor, in the order of the study. Values in SI; of words, the place in the list.
/// </summary>
public sealed class StudyColumns
{
    private readonly double[][] columns;
    private int first;
    private int count;

    internal StudyColumns(double[][] columns, int count)
    {
        this.columns = columns;
        this.count = count;
    }

    /// <summary>Number of rows.</summary>
    public int Rows => count;

    /// <summary>Number of factors.</summary>
    public int Factors => columns.Length;

    /// <summary>The column of a factor.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such factor.</exception>
    public ReadOnlySpan<double> this[int factor] =>
        columns[Guard.Within(factor, 0, columns.Length - 1, "Factor", nameof(factor))].AsSpan(first, count);

    /// <summary>Makes it stand for other rows of the same columns.</summary>
    internal StudyColumns At(int from, int rows)
    {
        first = from;
        count = rows;
        return this;
    }
}
