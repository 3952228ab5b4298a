using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Sheets;

/// <summary>What a sum begins with, in a table: each number at each end, and where it comes from.</summary>
internal static class SheetInputs
{
    private static readonly SheetEnd[] Ends = [SheetEnd.Whole, SheetEnd.Lowest, SheetEnd.MostLikely, SheetEnd.Highest];

    /// <summary>The table; nothing when no line is an input.</summary>
    /// <param name="lines">The lines of the calculation.</param>
    /// <param name="bases">Where inputs come from, by code.</param>
    /// <param name="of">What an input belongs to, by code, e.g. the name of a part.</param>
    /// <param name="phrase">Language and units.</param>
    public static IEnumerable<ReportBlock> Table(
        IReadOnlyList<CalculationLine> lines, IReadOnlyDictionary<string, BandBasis> bases, IReadOnlyDictionary<string, string> of,
        Phrase phrase)
    {
        CalculationLine[] inputs = [.. lines.Where(l => l.Formula.IsInput)];
        if (inputs.Length == 0)
        {
            yield break;
        }

        SheetEnd[] ends = [.. Ends.Where(e => inputs.Any(l => l.End == e))];
        IGrouping<string, CalculationLine>[] groups = [.. inputs.GroupBy(l => l.Formula.Code, StringComparer.Ordinal)];
        string[] heads = [phrase.Of("sheet.input"), .. ends.Select(e => phrase.Of(HeadOf(e))), phrase.Of("sheet.from")];
        yield return ReportBlock.Table(
            groups.Select(g => Row(g, ends, bases, of, phrase)).Prepend(heads),
            [.. groups.Select(g => MathText.Symbol(g.First().Formula.Symbol))]);
    }

    private static string[] Row(
        IEnumerable<CalculationLine> group, SheetEnd[] ends, IReadOnlyDictionary<string, BandBasis> bases,
        IReadOnlyDictionary<string, string> of, Phrase phrase)
    {
        CalculationStep step = group.First().Formula;
        return
        [
            Name(step, of, phrase),
            .. ends.Select(e => group.LastOrDefault(l => l.End == e) is { } line
                ? SheetUnits.Of(line, phrase).Replace(' ', '\u00A0') : string.Empty),
            From(step, bases, phrase),
        ];
    }

    /// <summary>The words of an end: lowest, most likely, highest.</summary>
    public static string HeadOf(SheetEnd end) => end switch
    {
        SheetEnd.Lowest => "report.ladder.low",
        SheetEnd.MostLikely => "report.ladder.expected",
        SheetEnd.Highest => "report.ladder.high",
        _ => "sheet.value",
    };

    private static string Name(CalculationStep step, IReadOnlyDictionary<string, string> of, Phrase phrase) =>
        step.Symbol + ": " + phrase.Words(step.Formula) + (of.TryGetValue(step.Code, out string? name) ? " (" + name + ")" : string.Empty);

    private static string From(CalculationStep step, IReadOnlyDictionary<string, BandBasis> bases, Phrase phrase) =>
        bases.TryGetValue(step.Code, out BandBasis? basis) ? string.Join("; ", BasisWords.Each([basis], [], phrase))
            : step.Source.Length == 0 ? string.Empty : phrase.Words(step.Source);
}
