using Driveline.Sweeps.Statistics;

namespace Driveline.Sweeps.Running;

/// <summary>A group of consecutive rows in memory, computed and written together. Reused; owned by one thread at a time.</summary>
internal sealed class RowGroup
{
    public RowGroup(StudyPlan plan)
    {
        int rows = (int)Math.Min(plan.RowsPerGroup, plan.Count);
        Factors = Columns(plan.Study.Factors.Count, rows);
        Numbers = [.. plan.Outputs.Select(o => o.IsWord ? [] : new double[rows])];
        Words = [.. plan.Outputs.Select(o => o.IsWord ? new string?[rows] : [])];
        Errors = new string?[rows];
        Summaries = new ValueSummary[plan.Outputs.Count];
    }

    /// <summary>Number of the first row.</summary>
    public long First { get; private set; }

    public int Count { get; private set; }

    public int Failed { get; set; }

    /// <summary>One column a factor.</summary>
    public double[][] Factors { get; }

    /// <summary>One column an output; empty for those that are words.</summary>
    public double[][] Numbers { get; }

    /// <summary>One column an output; empty for those that are numbers.</summary>
    public string?[][] Words { get; }

    /// <summary>Why a row has no answer; null when it has.</summary>
    public string?[] Errors { get; }

    /// <summary>What a tally has found of each output that is a number.</summary>
    public ValueSummary[] Summaries { get; }

    /// <summary>Makes it stand for other rows.</summary>
    public void Begin(long first, int count)
    {
        First = first;
        Count = count;
        if (Failed > 0)
        {
            Array.Clear(Errors);
        }

        Failed = 0;
    }

    /// <summary>Takes away what was answered of a row, and says why.</summary>
    public void Fail(int row, string reason)
    {
        Failed++;
        Errors[row] = reason;
        for (int k = 0; k < Numbers.Length; k++)
        {
            if (Numbers[k].Length > 0)
            {
                Numbers[k][row] = double.NaN;
            }
            else
            {
                Words[k][row] = null;
            }
        }
    }

    private static double[][] Columns(int count, int rows)
    {
        var columns = new double[count][];
        for (int k = 0; k < count; k++)
        {
            columns[k] = new double[rows];
        }

        return columns;
    }
}
