// README example: begin
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Reports;
using Driveline.Reports.Quotes;
using Driveline.Wording;

// README example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The README's example of a case file, compiled; a test keeps both the same.</summary>
internal static class ReadmeCaseExample
{
    public static void Run(TextWriter console)
    {
        string json = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "cases", "thornbeck-bolt-right.case.json"));

        // README example: go on
        CaseAssessment asked = CaseAssessment.Of(json);
        if (!asked.IsGood)
        {
            throw new InvalidDataException(string.Join("\n", asked.Errors));   // each with path, line and column
        }

        // the headline, both answers and what to measure next, in Spanish
        VerdictWords words = VerdictWords.Of(asked.Verdict(), Language.Spanish);
        string next = string.Join(" ", words.MeasureNext().Take(1));
        console.WriteLine(string.Join("\n", words.Headline(), words.Guards(), words.Quiet(), next));

        // what the shelf holds that may be fitted, with its number, its price and both margins
        StockFile shelf = StockFile.Parse("""
            sku,designation,grade,price,currency
            B-1042,3/8-16 x 2,SAE 5,0.85,USD
            B-1040,3/8-16 x 2,SAE 2,0.60,USD
            B-2210,M10x1.5x50,8.8,0.70,USD
            """);
        ChoiceTerms terms = asked.Terms().WithStock(shelf.List);
        foreach (RankedBolt bolt in asked.Choice(terms, CancellationToken.None).Choices)
        {
            console.WriteLine(
                $"{bolt.Item.Sku} {bolt.Item.Name}, {bolt.Item.Price:F2}: work {bolt.WorkMargin:F2}, guard {bolt.GuardMargin:F2}");
        }

        // a quote from that shelf, a page to hand over
        string quote = QuoteHtml.Of(
            asked.Choice(terms, CancellationToken.None), null, QuoteTerms.Default.WithQuantity(5).WithLabour(40m), ReportOptions.Default);

        // the advice on the complaint as JSON, for another program
        string advice = AdviceJson.Of(asked.Advice(), ResultOptions.Default.WithCase(asked.File)).ToJson();

        // README example: end
        if (!advice.Contains("\"result\": \"Advise\"", StringComparison.Ordinal) || !quote.Contains("3/8-16 UNC", StringComparison.Ordinal))
        {
            throw new InvalidOperationException("The example must give an advice and a quote.");
        }
    }
}
