using Driveline.Quantities;
using Driveline.Sweeps.Running;

namespace Driveline.Sweeps;

/// <summary>The rows of a study in memory, by columns.</summary>
public sealed class StudyTable
{
    private readonly StudyPlan plan;
    private readonly double[][] factors;
    private readonly double[][] numbers;
    private readonly string?[][] words;
    private string?[]? errors;

    internal StudyTable(StudyPlan plan, long first, long rows)
    {
        this.plan = plan;
        First = first;
        if (rows > Array.MaxLength)
        {
            throw new ArgumentException(FormattableString.Invariant(
                $"A table in memory has at most {Array.MaxLength} rows; this study has {rows}. Write it to a file."));
        }

        Rows = (int)rows;
        // Every number is written before the table is given away.
        factors = [.. plan.Study.Factors.Select(_ => GC.AllocateUninitializedArray<double>(Rows))];
        numbers = [.. plan.Outputs.Select(o => GC.AllocateUninitializedArray<double>(o.IsWord ? 0 : Rows))];
        words = [.. plan.Outputs.Select(o => new string?[o.IsWord ? Rows : 0])];
    }

    /// <summary>Number of rows.</summary>
    public int Rows { get; }

    /// <summary>Number of its first row in the study.</summary>
    public long First { get; }

    /// <summary>A column of numbers: a factor or an output, in SI; NaN where it is not known; of words, the place in the list.</summary>
    /// <exception cref="ArgumentException">There is no such column of numbers.</exception>
    public ReadOnlySpan<double> Numbers(string column)
    {
        int factor = Index(plan.Study.Factors.Select(f => f.Name), column);
        return factor >= 0 ? factors[factor] : numbers[OutputOf(column, isWord: false)];
    }

    /// <summary>A column of words; null where nothing is known.</summary>
    /// <exception cref="ArgumentException">There is no such column of words.</exception>
    public ReadOnlySpan<string?> Words(string column) => words[OutputOf(column, isWord: true)];

    /// <summary>Why a row has no answer; null when it has.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such row.</exception>
    public string? ErrorOf(int row)
    {
        Guard.Within(row, 0, Rows - 1, "Row", nameof(row));
        return errors?[row];
    }

    /// <summary>Takes the rows of a group; several threads may, each with groups of its own.</summary>
    internal void Take(RowGroup group)
    {
        int at = (int)(group.First - First);
        for (int d = 0; d < factors.Length; d++)
        {
            group.Factors[d].AsSpan(0, group.Count).CopyTo(factors[d].AsSpan(at));
        }

        for (int o = 0; o < numbers.Length; o++)
        {
            if (numbers[o].Length > 0)
            {
                group.Numbers[o].AsSpan(0, group.Count).CopyTo(numbers[o].AsSpan(at));
            }
            else
            {
                group.Words[o].AsSpan(0, group.Count).CopyTo(words[o].AsSpan(at));
            }
        }

        if (group.Failed > 0)
        {
            if (errors is null)
            {
                Interlocked.CompareExchange(ref errors, new string?[Rows], null);
            }

            group.Errors.AsSpan(0, group.Count).CopyTo(errors.AsSpan(at));
        }
    }

    private int OutputOf(string column, bool isWord)
    {
        int output = Index(plan.Outputs.Select(o => o.Name), column);
        return output >= 0 && plan.Outputs[output].IsWord == isWord ? output : throw new ArgumentException(
            "There is no column of " + (isWord ? "words" : "numbers") + " \"" + column + "\"; there are: "
                + string.Join(", ", plan.Outputs.Where(o => o.IsWord == isWord).Select(o => o.Name)
                    .Concat(isWord ? [] : plan.Study.Factors.Select(f => f.Name))) + ".", nameof(column));
    }

    private static int Index(IEnumerable<string> names, string name) => names.ToList().IndexOf(name);
}
