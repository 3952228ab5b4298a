using System.Globalization;
using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Choices;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Quotes;

/// <summary>The content of a quote. What is not offered is named with its reason; the cautions stand before the place to sign.</summary>
internal static class QuoteReport
{
    public static IReadOnlyList<ReportBlock> Of(BoltChoice choice, StockFile? file, QuoteTerms terms, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var offer = new QuoteOffer(choice, terms.Sku);
        var blocks = new List<ReportBlock>();
        if (options.Title is { } title)
        {
            blocks.Add(ReportBlock.Title(CleanText.Title(title)));
        }

        ProtectionVerdict verdict = offer.Chosen?.Verdict ?? choice.AsFitted;
        StandingSentences.Add(verdict.Standing, phrase, blocks);
        if (offer.Chosen is { } bolt)
        {
            AddOffer(bolt, terms, phrase, blocks);
        }
        else
        {
            blocks.Add(ReportBlock.Lead(phrase.Of("quote.nothing"), LeadTone.Bad));
        }

        AddFindings(choice, phrase, blocks);
        if (offer.Others.Count > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("quote.others")));
            blocks.Add(OthersTable(offer.Others, phrase));
        }

        AddLeftOut(choice, file, offer, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets((offer.Chosen?.Cautions ?? []).Concat(choice.Cautions).Distinct().Select(c => phrase.Of(c.Code))));
        blocks.Add(ReportBlock.Sign([phrase.Of("quote.sign")]));
        return blocks;
    }

    private static void AddOffer(RankedBolt bolt, QuoteTerms terms, Phrase phrase, List<ReportBlock> blocks)
    {
        blocks.Add(ReportBlock.Lead(
            phrase.Of(Phrase.Code("quote.lead")
                .With("quantity", QuantityKind.Count, terms.Quantity)
                .With("bolt", BoltWords.Label(bolt.Item, phrase))
                .With("mark", BoltWords.Mark(bolt, phrase))) + " " + AnswerSentences.Headline(bolt.Verdict, phrase),
            LeadTones.Of(bolt.Verdict)));
        AddSum(bolt.Item, terms, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("quote.margins")));
        blocks.Add(ReportBlock.Bullets(
        [
            phrase.Of(Phrase.Code("quote.guardMargin").With("margin", BoltWords.Margin(bolt.GuardMargin, phrase))),
            phrase.Of(Phrase.Code("quote.workMargin").With("margin", BoltWords.Margin(bolt.WorkMargin, phrase))),
            bolt.Item.Length is { } length ? phrase.Of(Phrase.Code("quote.length").With("length", QuantityKind.Length, length.Meters))
                : phrase.Of("quote.length.blank"),
        ]));
    }

    private static void AddSum(StockItem item, QuoteTerms terms, Phrase phrase, List<ReportBlock> blocks)
    {
        string notKnown = phrase.Of("choice.notKnown");
        decimal? each = item.Price is { } price ? (decimal)price : null;
        decimal? parts = each is { } one ? QuoteMoney.Rounded(one * terms.Quantity) : null;
        string Money(decimal? amount) => amount is { } known ? QuoteMoney.In(known, item.Currency, phrase) : notKnown;
        var rows = new List<string[]>
        {
            new[] { phrase.Of("quote.part"), phrase.Of("quote.quantity"), phrase.Of("quote.each"), phrase.Of("quote.amount") },
            new[] { BoltWords.Label(item, phrase), terms.Quantity.ToString(CultureInfo.InvariantCulture), Money(each), Money(parts) },
        };
        if (terms.Labour is { } labour)
        {
            rows.Add([phrase.Of("quote.labour"), string.Empty, string.Empty, Money(labour)]);
        }

        bool isOpen = parts is null || string.IsNullOrWhiteSpace(item.Currency);
        if (parts is { } known)
        {
            rows.Add([phrase.Of("quote.total"), string.Empty, string.Empty, Money(known + QuoteMoney.Rounded(terms.Labour ?? 0))]);
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("quote.parts")));
        blocks.Add(ReportBlock.Table(rows));
        if (isOpen)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("quote.total.open")));
        }

        blocks.Add(ReportBlock.Paragraph(terms.ValidUntil is { } date
            ? phrase.Of(Phrase.Code("quote.validUntil").With("date", CleanText.Name(date))) : phrase.Of("quote.validUntil.blank")));
    }

    private static void AddFindings(BoltChoice choice, Phrase phrase, List<ReportBlock> blocks)
    {
        string[] noticed =
        [
            .. choice.Findings.Where(f => f.Severity != Severity.Note)
                .Select(f => phrase.Of("severity." + f.Severity) + ": " + phrase.Of(f)),
        ];
        if (noticed.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("choice.findings")));
            blocks.Add(ReportBlock.Bullets(noticed));
        }
    }

    private static ReportBlock OthersTable(IReadOnlyList<RankedBolt> others, Phrase phrase) => ReportBlock.Table(
    [
        [phrase.Of("choice.bolt"), phrase.Of("quote.each"), phrase.Of("choice.guardMargin"), phrase.Of("choice.workMargin")],
        .. others.Select(b => new[]
        {
            BoltWords.Label(b.Item, phrase),
            b.Item.Price is { } price ? QuoteMoney.In((decimal)price, b.Item.Currency, phrase) : phrase.Of("choice.notKnown"),
            BoltWords.Margin(b.GuardMargin, phrase), BoltWords.Margin(b.WorkMargin, phrase),
        }),
    ]);

    private static string WhyNot(RankedBolt bolt) => bolt.IsStrongerThanSpecified switch
    {
        true => "quote.stronger",
        false => "quote.noRoom",
        null => "quote.notCompared",
    };

    private static void AddLeftOut(
        BoltChoice choice, StockFile? file, QuoteOffer offer, Phrase phrase, List<ReportBlock> blocks)
    {
        string[] lines =
        [
            .. offer.NotPermitted.Select(b => phrase.Of(Phrase.Code(WhyNot(b)).With("bolt", BoltWords.Label(b.Item, phrase)))),
            .. choice.LeftOut.Select(l => phrase.Of(l.Reason)),
            .. file?.LeftOut.Select(r => phrase.Of(r.Reason)) ?? [],
        ];
        if (lines.Length > 0)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("quote.leftOut")));
            blocks.Add(ReportBlock.Bullets(lines));
        }
    }
}
