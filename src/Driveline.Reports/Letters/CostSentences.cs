using Driveline.Advice;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>What the owner's options cost over the years, as a table, with the breaks a year at which another is cheaper.</summary>
internal static class CostSentences
{
    public static void Add(IReadOnlyList<OwnershipCost> costs, Phrase phrase, List<ReportBlock> blocks)
    {
        if (costs.Count == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("letter.costs")));
        OwnershipTerms terms = costs[0].Terms;
        string head = phrase.Of(Phrase.Code("letter.costs.option")
            .With("currency", CleanText.Name(terms.Currency))
            .With("years", QuantityKind.Count, terms.Years));
        blocks.Add(ReportBlock.Table(
        [
            [head, phrase.Of("report.ladder.low"), phrase.Of("report.ladder.expected"), phrase.Of("report.ladder.high")],
            .. costs.Select(
                c => (string[])[phrase.Capital(c.Option.Name), Amount(c.Total.Low, phrase), Amount(c.Total.Expected, phrase),
                Amount(c.Total.High, phrase)]),
        ]));
        string[] breakEvens = [.. costs.SelectMany(c => costs.Where(o => o != c).Select(o => BreakEven(c, o, phrase))).OfType<string>()];
        if (breakEvens.Length > 0)
        {
            blocks.Add(ReportBlock.Bullets(breakEvens));
        }
    }

    private static string? BreakEven(OwnershipCost cost, OwnershipCost other, Phrase phrase)
    {
        // Between two bolts the breaks are what differs: only against one without breaks does their number decide.
        if (cost.Option.BreaksPerYear.High is 0 || other.Option.BreaksPerYear.High is not 0
            || cost.BreakEvenBreaksPerYear(other) is not { } breaks)
        {
            return null;
        }

        return phrase.Of(Phrase.Code(breaks > 0 ? "letter.costs.breakEven" : "letter.costs.always")
            .With("option", phrase.Name(cost.Option.Name))
            .With("other", phrase.Capital(other.Option.Name))
            .With("breaks", QuantityKind.Number, breaks));
    }

    private static string Amount(double? amount, Phrase phrase) => amount is { } known ? MoneyWords.Of(known, phrase)
        : phrase.Of("report.ladder.open");
}
