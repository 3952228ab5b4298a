namespace Driveline.Monitoring;

/// <summary>A row of a log that could not be read.</summary>
public sealed class RowProblem
{
    /// <summary>A row and what is wrong with it.</summary>
    /// <param name="line">Its line, from 1.</param>
    /// <param name="column">The column whose cell is no number; null when the number of cells is wrong.</param>
    public RowProblem(long line, string? column)
    {
        Line = line;
        Column = column;
    }

    /// <summary>Its line, from 1.</summary>
    public long Line { get; }

    /// <summary>The column whose cell is no number; null when the number of cells is wrong.</summary>
    public string? Column { get; }
}
