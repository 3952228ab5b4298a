using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Running;

/// <summary>Computes groups of rows. One thread owns it; what it needs is made once.</summary>
internal sealed class GroupWork
{
    private const int LongestReason = 300;

    // Rows of a few columns that stay in the nearest cache from their points to their outputs.
    private const int Block = 512;

    private readonly StudyPlan plan;
    private readonly CaseOutput[] ofCase;
    private readonly int[] places;
    private readonly CaseScratch scratch;
    private readonly double[] row;
    private readonly double[] numbers;
    private readonly string?[] words;
    private readonly bool[] needsCase;
    private readonly bool hasRows;
    private readonly int[] ofColumns;
    private StudyColumns? columnsOf;
    private RowGroup? current;

    public GroupWork(StudyPlan plan)
    {
        this.plan = plan;
        places = [.. Enumerable.Range(0, plan.Outputs.Count).Where(k => plan.Outputs[k].OfCase is not null)];
        ofCase = [.. places.Select(k => plan.Outputs[k].OfCase!)];
        scratch = new CaseScratch(plan.Study.Factors.Count);
        row = new double[plan.Study.Factors.Count];
        numbers = new double[ofCase.Length];
        words = new string?[ofCase.Length];
        needsCase = plan.Kernel is null ? [] : new bool[plan.RowsPerGroup];
        ofColumns = [.. Enumerable.Range(0, plan.Outputs.Count).Where(k => plan.Outputs[k].Columns is not null)];
        hasRows = plan.Outputs.Any(o => o.Row is not null || o.Word is not null);
    }

    /// <summary>Computes the rows of a group, from 0.</summary>
    public void Compute(long group, RowGroup into, CancellationToken stop)
    {
        long first = group * plan.RowsPerGroup;
        into.Begin(first, (int)Math.Min(plan.RowsPerGroup, plan.Count - first));
        bool isByBlocks = ofCase.Length == 0;
        for (int from = 0; from < into.Count; from += Block)
        {
            int count = Math.Min(Block, into.Count - from);
            Sample(into, from, count);
            if (isByBlocks)
            {
                Columns(into, from, count);
            }
        }

        if (!isByBlocks)
        {
            Cases(into, stop);
            Columns(into, 0, into.Count);
        }

        if (hasRows)
        {
            for (int k = 0; k < into.Count; k++)
            {
                stop.ThrowIfCancellationRequested();
                Row(into, k);
            }
        }
    }

    /// <summary>Writes the factors of the rows that the group stands for.</summary>
    public void Sample(RowGroup into) => Sample(into, 0, into.Count);

    private void Sample(RowGroup into, int from, int count)
    {
        double[][] columns = into.Factors;
        plan.Points.Fill(into.First + from, count, columns, from);
        for (int d = 0; d < columns.Length && plan.TakesEnds; d++)
        {
            plan.Study.Factors[d].Distribution.Cuts(columns[d].AsSpan(from, count));
        }

        plan.Copula?.Apply(from, count, columns);
        for (int d = 0; d < columns.Length; d++)
        {
            plan.Study.Factors[d].Distribution.Quantiles(columns[d].AsSpan(from, count));
        }
    }

    private void Cases(RowGroup into, CancellationToken stop)
    {
        plan.Kernel?.Compute(into, places, needsCase);
        for (int k = 0; k < into.Count; k++)
        {
            stop.ThrowIfCancellationRequested();
            if (plan.Kernel is not null && !needsCase[k])
            {
                continue;
            }

            string? problem;
            try
            {
                problem = plan.Rows!.Answer(into.Factors, k, scratch, ofCase, numbers, words, stop);
            }
            catch (Exception failed) when (IsOfRow(failed))
            {
                problem = Reason(failed);
            }

            if (problem is not null)
            {
                into.Fail(k, Short(problem));
                continue;
            }

            for (int o = 0; o < places.Length; o++)
            {
                if (ofCase[o].IsWord)
                {
                    into.Words[places[o]][k] = words[o];
                }
                else
                {
                    into.Numbers[places[o]][k] = numbers[o];
                }
            }
        }
    }

    private void Columns(RowGroup into, int from, int count)
    {
        if (current != into)
        {
            columnsOf = new StudyColumns(into.Factors, count);
            current = into;
        }

        foreach (int at in ofColumns)
        {
            Columns(plan.Outputs[at].Columns!, into, from, count, at);
        }
    }

    private void Columns(ColumnOutput output, RowGroup into, int from, int count, int at)
    {
        try
        {
            output(columnsOf!.At(from, count), into.Numbers[at].AsSpan(from, count));
        }
        catch (Exception failed) when (IsOfRow(failed))
        {
            for (int k = from; k < from + count; k++)
            {
                if (into.Errors[k] is null)
                {
                    into.Fail(k, Reason(failed));
                }
            }
        }
    }

    private void Row(RowGroup into, int k)
    {
        if (into.Errors[k] is not null)
        {
            into.Failed--;
            into.Fail(k, into.Errors[k]!);
            return;
        }

        for (int d = 0; d < row.Length; d++)
        {
            row[d] = into.Factors[d][k];
        }

        try
        {
            for (int o = 0; o < plan.Outputs.Count; o++)
            {
                if (plan.Outputs[o].Row is { } number)
                {
                    into.Numbers[o][k] = number(row);
                }
                else if (plan.Outputs[o].Word is { } word)
                {
                    into.Words[o][k] = word(row);
                }
            }
        }
        catch (Exception failed) when (IsOfRow(failed))
        {
            into.Fail(k, Reason(failed));
        }
    }

    private static bool IsOfRow(Exception failed) => failed is not (OutOfMemoryException or OperationCanceledException);

    private static string Reason(Exception failed) => Short(failed.GetType().Name + ": " + failed.Message);

    private static string Short(string reason)
    {
        string line = reason.ReplaceLineEndings(" ");
        return line.Length <= LongestReason ? line : line[..LongestReason] + "…";
    }
}
