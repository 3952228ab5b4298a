namespace Driveline.Monitoring;

/// <summary>A row of a log that was left out.</summary>
public sealed class RowProblem
{
    /// <summary>A row and what is wrong with it.</summary>
    /// <param name="line">Its line, from 1.</param>
    /// <param name="trouble">Why it was left out.</param>
    public RowProblem(long line, RowTrouble trouble)
    {
        Line = line;
        Trouble = trouble;
    }

    /// <summary>A row with a cell that is no number.</summary>
    /// <param name="line">Its line, from 1.</param>
    /// <param name="column">The column of the cell.</param>
    public RowProblem(long line, string column)
        : this(line, RowTrouble.Number) => Column = column;

    /// <summary>Its line, from 1.</summary>
    public long Line { get; }

    /// <summary>Why it was left out.</summary>
    public RowTrouble Trouble { get; }

    /// <summary>The column whose cell is no number; null when it is not one cell.</summary>
    public string? Column { get; }
}
