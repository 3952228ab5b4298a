using Driveline.Monitoring;

namespace Driveline.Cli.Telemetry;

/// <summary>Counts the rows that cannot be read, and names the first that were left out for each reason.</summary>
internal sealed class RowNotes
{
    private const int MostNamed = 5;

    private readonly int[] named = new int[Enum.GetValues<RowTrouble>().Length];
    private readonly List<RowProblem> first = [];

    /// <summary>Rows that could not be read, those before a saved state included.</summary>
    public long Unreadable { get; set; }

    /// <summary>The first rows left out for each reason.</summary>
    public IReadOnlyList<RowProblem> First => first;

    /// <summary>A row that cannot be read.</summary>
    public void Refuse(long line, RowTrouble trouble)
    {
        Unreadable++;
        Name(line, trouble);
    }

    /// <summary>A row with a cell that is no number.</summary>
    public void Refuse(long line, string column)
    {
        Unreadable++;
        if (named[(int)RowTrouble.Number]++ < MostNamed)
        {
            first.Add(new RowProblem(line, column));
        }
    }

    /// <summary>Names a row that a monitor left out.</summary>
    public void Name(long line, RowTrouble trouble)
    {
        if (line > 0 && named[(int)trouble] < MostNamed)
        {
            named[(int)trouble]++;
            first.Add(new RowProblem(line, trouble));
        }
    }
}
