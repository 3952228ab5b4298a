using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>
/// Columns of consecutive rows: one span a factor, in the order of the study. Values in SI; of words, the place in the list.
/// </summary>
public sealed class StudyColumns
{
    private readonly double[][] columns;
    private readonly int count;

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
        columns[Guard.Within(factor, 0, columns.Length - 1, "Factor", nameof(factor))].AsSpan(0, count);
}
