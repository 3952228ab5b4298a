using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Cases.Questions;
using Driveline.Quantities;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Rows;

/// <summary>Answers a case with the values of a row in place of its own.</summary>
/// <remarks>
/// Nothing is written or read as text: the changed facts are put into the case, and what no factor touches is mapped once. Safe for
/// several threads.
/// </remarks>
internal sealed class CaseRows
{
    private readonly CasePatch patch;
    private readonly IReadOnlyList<Factor> factors;
    private readonly CaseTarget[] targets;
    private readonly Member[] varied;
    private SharedMapping? shared;

    public CaseRows(CaseFile file, IReadOnlyList<Factor> factors, IReadOnlyList<CaseTarget> targets)
    {
        this.factors = factors;
        this.targets = [.. targets];
        patch = new CasePatch(file, targets);
        varied = [.. targets.SelectMany(t => t.Steps).Select(s => s.Member).Distinct()];
    }

    /// <summary>Answers one row.</summary>
    /// <param name="columns">Columns of the factors.</param>
    /// <param name="row">Which row of them.</param>
    /// <param name="scratch">What the thread computes with.</param>
    /// <param name="outputs">What is asked.</param>
    /// <param name="numbers">Receives the outputs that are numbers.</param>
    /// <param name="words">Receives the outputs that are words.</param>
    /// <param name="stop">Stops a simulation.</param>
    /// <returns>Why the row has no answer; null when it has.</returns>
    public string? Answer(
        double[][] columns, int row, CaseScratch scratch, ReadOnlySpan<CaseOutput> outputs, double[] numbers, string?[] words,
        CancellationToken stop)
    {
        if (Asked(columns, row, scratch, out string? problem) is not { } asked)
        {
            return problem;
        }

        foreach (CaseOutput output in outputs)
        {
            // Its runs are those that the other outputs need.
            if (output.Row.Cost == OutputCost.WholeSimulation)
            {
                asked.Simulation(stop);
                break;
            }
        }

        for (int k = 0; k < outputs.Length; k++)
        {
            if (outputs[k].IsWord)
            {
                words[k] = outputs[k].Word(asked, stop);
            }
            else
            {
                numbers[k] = outputs[k].Number(asked, stop);
            }
        }

        return null;
    }

    /// <summary>The case of a row; null, with the reason, when its facts are not permitted or contradict each other.</summary>
    /// <remarks>It holds until the next row is asked with the same scratch.</remarks>
    public CaseAssessment? Asked(double[][] columns, int row, CaseScratch scratch, out string? problem)
    {
        object[] values = scratch.Values;
        for (int d = 0; d < targets.Length; d++)
        {
            double value = columns[d][row];
            Member member = targets[d].Member;
            object? fact = factors[d].Choices is { } choices ? choices[(int)value] : member.OfSi(value);
            if (fact is null)
            {
                problem = factors[d].Name + " must be " + member.PermittedWords + "; got " + Shown(member, value) + ".";
                return null;
            }

            values[d] = fact;
        }

        // What is shared is taken of a row that keeps its case; each later row of the thread takes the place of the one before.
        SharedMapping? known = Volatile.Read(ref shared);
        PatchedCase copy = known is null ? patch.NewCopy() : scratch.Case ??= patch.NewCopy();
        if (patch.Put(copy, values, out problem) is not { } file)
        {
            return null;
        }

        CaseAssessment asked = CaseAssessment.Of(file, known, scratch.Workspaces);
        if (!asked.IsGood)
        {
            problem = asked.Errors[0].Path + ": " + asked.Errors[0].Message;
            return null;
        }

        // What the rows share does not depend on the row of which it is taken.
        if (known is null)
        {
            Interlocked.CompareExchange(ref shared, asked.Share(varied), null);
        }

        return asked;
    }

    private static string Shown(Member member, double value) => member.Quantity is { } quantity
        ? QuantityText.Format(value, quantity.Range.Dimension)
        : value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture);
}
