using Driveline.Provenance;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Sheets;

/// <summary>One step of a worked sum: formula, numbers put in, result, clause.</summary>
internal sealed class WorkedStep
{
    private WorkedStep(string plain, IReadOnlyList<string> math, string clause)
    {
        Plain = plain;
        Math = math;
        Clause = clause;
    }

    /// <summary>As one line of text.</summary>
    public string Plain { get; }

    /// <summary>As the insides of MathML elements, of which each goes on a line of its own where there is no room.</summary>
    public IReadOnlyList<string> Math { get; }

    /// <summary>Where the formula or the number comes from.</summary>
    public string Clause { get; }

    /// <summary>A recorded line with the values that its symbols had before it.</summary>
    public static WorkedStep Of(CalculationLine line, IReadOnlyDictionary<string, string> values, Phrase phrase)
    {
        CalculationStep step = line.Formula;
        string value = SheetUnits.Of(line, phrase);
        string symbol = MathText.Symbol(step.Symbol);
        IReadOnlyList<string>? symbols = MathText.Symbols(step.Formula);
        if (symbols is null)
        {
            string clause = phrase.Words(step.Formula) + (step.Source.Length == 0 ? string.Empty : " (" + phrase.Words(step.Source) + ")");
            return new WorkedStep(step.Symbol + " = " + value, [symbol + "<mo>=</mo>" + MathText.Value(value)], clause);
        }

        bool isKnown = symbols.Count > 0 && symbols.All(values.ContainsKey);
        string put = isKnown ? MathText.Read(step.Formula, s => values[s])! : string.Empty;
        return new WorkedStep(
            step.Symbol + " = " + step.Formula + (isKnown ? " = " + PutIn(step.Formula, symbols, values) : string.Empty) + " = " + value,
            [
                symbol + "<mo>=</mo>" + MathText.Read(step.Formula, _ => null), .. isKnown ? new[] { "<mo>=</mo>" + put } : [],
                "<mo>=</mo>" + MathText.Value(value),
            ],
            step.Source.Length == 0 ? string.Empty : phrase.Words(step.Source));
    }

    private static string PutIn(string formula, IReadOnlyList<string> symbols, IReadOnlyDictionary<string, string> values)
    {
        var text = new System.Text.StringBuilder();
        int from = 0;
        foreach (string symbol in symbols)
        {
            int found = formula.IndexOf(symbol, from, StringComparison.Ordinal);
            text.Append(formula, from, found - from).Append(values[symbol]);
            from = found + symbol.Length;
        }

        return text.Append(formula, from, formula.Length - from).ToString();
    }
}
