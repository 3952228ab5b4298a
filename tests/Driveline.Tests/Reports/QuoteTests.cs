using Driveline.Choosing;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Reports.Quotes;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

public class QuoteTests
{
    private const string Rows = """
        sku,designation,grade,length,coating,price,currency
        B-0301,3/8-16 x 2-1/2,SAE 2,,plain,0.52,USD
        B-0302,3/8-16 x 2-1/2,SAE 5,,zinc,0.775,USD
        B-0303,3/8-16 x 2-1/2,SAE 8,,zinc,1.35,USD
        M-1261,M12x1.75x60,8.8,,zinc,0.70,USD
        X-1,banana,SAE 5,,,1,USD
        """;

    private static readonly StockFile Stock = StockFile.Parse(Rows);

    [Fact]
    public void Quote_OfTheManualsBolt_AddsUpToTheCent()
    {
        string page = QuoteHtml.Of(
            ChoiceOf("thornbeck-bolt-right"), Stock,
            QuoteTerms.Default.WithQuantity(3).WithLabour(45.5m).WithValidUntil("31 December 2026"),
            ReportOptions.Default.WithTitle("cutter"));
        Assert.Contains("3/8-16 UNC SAE 5 (B-0302)", page, StringComparison.Ordinal);
        Assert.Contains(">0.78\u00A0USD<", page, StringComparison.Ordinal);     // 0.775: half a cent up
        Assert.Contains(">2.33\u00A0USD<", page, StringComparison.Ordinal);     // 3 · 0.775 = 2.325: half a cent up
        Assert.Contains(">45.50\u00A0USD<", page, StringComparison.Ordinal);
        Assert.Contains(">47.83\u00A0USD<", page, StringComparison.Ordinal);    // 2.33 + 45.50
        Assert.Contains("Valid until 31 December 2026.", page, StringComparison.Ordinal);
        Assert.Contains("class=\"dl-sign\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Quote_EveryRowNotOffered_IsNamedWithItsReason()
    {
        string text = QuoteHtml.Text(ChoiceOf("thornbeck-bolt-right"), Stock, QuoteTerms.Default, ReportOptions.Default)
            .Replace("\n  ", " ", StringComparison.Ordinal);
        Assert.Contains("- 3/8-16 UNC SAE 2 (B-0301): it leaves no room", text, StringComparison.Ordinal);
        Assert.Contains("- 3/8-16 UNC SAE 8 (B-0303): stronger than the manual's.", text, StringComparison.Ordinal);
        Assert.Contains("- M12 ISO 8.8 (M-1261): it does not go through the hole", text, StringComparison.Ordinal);
        Assert.Contains("- X-1 banana SAE 5: its size is not understood.", text, StringComparison.Ordinal);
        foreach (string sku in Rows.Split('\n').Skip(1).Select(r => r.Split(',')[0]))
        {
            Assert.Contains(sku, text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("B-0303")]   // stronger than the manual's
    [InlineData("B-0301")]   // no room in work
    [InlineData("nothing")]
    public void Quote_OfARowThatMayNotBeOffered_OffersNothing(string sku) => Assert.Contains(
        "No bolt of this stock can be quoted", QuoteHtml.Text(
            ChoiceOf("thornbeck-bolt-right"), Stock, QuoteTerms.Default.WithSku(sku), ReportOptions.Default), StringComparison.Ordinal);

    [Fact]
    public void Quote_WhileTheMachineMustStop_OffersNothing() => Assert.Contains(
        "No bolt of this stock can be quoted",
        QuoteHtml.Text(ChoiceOf("thornbeck-seized-hub"), Stock, QuoteTerms.Default, ReportOptions.Default), StringComparison.Ordinal);

    [Fact]
    public void Quote_OneMargin_IsRoundedOneWayEverywhere()
    {
        BoltChoice choice = ChoiceOf("thornbeck-bolt-right");
        string margin = QuantityWords.Of(choice.Best!.GuardMargin!.Value, Driveline.Findings.QuantityKind.Margin, DisplayUnits.Metric,
            Language.English);
        Assert.Contains("strongest bolt: " + margin, QuoteHtml.Text(choice, Stock, QuoteTerms.Default, ReportOptions.Default),
            StringComparison.Ordinal);
        Assert.Matches(@"(?<![0-9])" + margin.Replace(".", "[.]", StringComparison.Ordinal) + "(?![0-9])", ChoiceText.Of(choice));
        Assert.Contains(">" + margin + "<", ChoiceHtml.Of(choice, [], ReportOptions.Default), StringComparison.Ordinal);
    }

    [Fact]
    public void Quote_InSpanish_HasItsWords()
    {
        string page = QuoteHtml.Of(
            ChoiceOf("thornbeck-bolt-right"), Stock, QuoteTerms.Default, ReportOptions.Default.WithLanguage(Language.Spanish));
        Assert.Contains("Presupuesto", page, StringComparison.Ordinal);
        Assert.Contains("0,78\u00A0USD", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Take care", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10001)]
    public void Quantity_OutsideItsRange_IsRefused(int quantity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => QuoteTerms.Default.WithQuantity(quantity));

    private static BoltChoice ChoiceOf(string demo)
    {
        ProtectionQuestion question = DemoCases.Verdict(demo).Question;
        return BoltChoice.For(question, ChoiceTerms.Default.WithStock(Stock.List));
    }
}
