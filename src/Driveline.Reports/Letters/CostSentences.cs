using Driveline.Advice;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>
/// What the owner's options cost over the years, as a table, with the breaks a year at which another is cheaper. One that protects
/// nothing in the end stands last, says so, and is not compared.
/// </summary>
internal static class CostSentences
{
    /// <summary>The cheapest option that protects and the most expensive, over the years; null when there are no two.</summary>
    public static string? InBrief(IReadOnlyList<OwnershipCost> costs, Phrase phrase)
    {
        OwnershipCost[] known = [.. costs.Where(c => !c.IsLikelyStuck && c.Total.Expected is not null)];
        if (known.Length < 2)
        {
            return null;
        }

        OwnershipCost cheap = known[0];
        OwnershipCost expensive = known[known.Length - 1];
        return phrase.Of(Phrase.Code("letter.do.money")
            .With("years", QuantityKind.Count, cheap.Terms.Years)
            .With("option", phrase.Name(cheap.Option.Name))
            .With("low", MoneyWords.InOrOpen(cheap.Total.Expected, cheap.Terms.Currency, phrase))
            .With("other", phrase.Name(expensive.Option.Name))
            .With("high", MoneyWords.InOrOpen(expensive.Total.Expected, expensive.Terms.Currency, phrase)));
    }

    public static void Add(IReadOnlyList<OwnershipCost> costs, Phrase phrase, List<ReportBlock> blocks)
    {
        if (costs.Count == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("letter.costs")));
        OwnershipTerms terms = costs[0].Terms;
        blocks.Add(ReportBlock.Paragraph(terms.DiscountRate > 0
            ? phrase.Of(Phrase.Code("letter.costs.today").With("rate", QuantityKind.Probability, terms.DiscountRate))
            : phrase.Of("letter.costs.sum")));
        string head = phrase.Of(Phrase.Code("letter.costs.option").With("years", QuantityKind.Count, terms.Years));
        string Amount(double? amount) => MoneyWords.InOrOpen(amount, terms.Currency, phrase);
        blocks.Add(ReportBlock.Table(
        [
            [head, phrase.Of("report.ladder.low"), phrase.Of("report.ladder.expected"), phrase.Of("report.ladder.high")],
            .. costs.OrderBy(c => c.IsLikelyStuck ? 1 : 0).Select(c =>
                (string[])[Name(c, phrase), Amount(c.Total.Low), Amount(c.Total.Expected), Amount(c.Total.High)]),
        ]));
        OwnershipCost[] safe = [.. costs.Where(c => !c.IsLikelyStuck)];
        string[] breakEvens = [.. safe.SelectMany(c => safe.Where(o => o != c).Select(o => BreakEven(c, o, phrase))).OfType<string>()];
        if (breakEvens.Length > 0)
        {
            blocks.Add(ReportBlock.Bullets(breakEvens));
        }
    }

    private static string Name(OwnershipCost cost, Phrase phrase) => cost.IsLikelyStuck
        ? phrase.Of(Phrase.Code("letter.costs.notSafe").With("option", phrase.Capital(cost.Option.Name)))
        : phrase.Capital(cost.Option.Name);

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
            .With("breaks", QuantityKind.Count, Math.Ceiling(breaks)));
    }
}
