using Driveline.Advice;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Clutches;
using Driveline.Reports;
using Driveline.Reports.Choices;
using Driveline.Reports.Clutches;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;
using Driveline.Reports.Quotes;
using Driveline.Reports.Simulations;

namespace Driveline.Cli.Pages;

/// <summary>The report that each command makes of a case.</summary>
internal static class CaseReports
{
    public static PageReport Verdict(CaseInput input, ReportOptions options)
    {
        string picture = input.Name + ".ladder.svg";
        return new PageReport
        {
            Name = input.Name + ".report",
            Title = input.Title,
            Says = () => VerdictWords.Of(input.Verdict, options.Language, options.Units).Headline(),
            Text = () => VerdictText.Of(input.Verdict, options),
            Markdown = () => VerdictMarkdown.Of(input.Verdict, options),
            MarkdownBesidePicture = () => VerdictMarkdown.Of(input.Verdict, options, picture),
            Html = () => VerdictHtml.Of(input.Verdict, options),
            More = () => [new(picture, TorqueLadderPicture.Svg(input.Verdict, options)), .. Calculations(input, options)],
        };
    }

    public static PageReport Advice(CaseInput input, OwnerAdvice advice, ReportOptions options) => new()
    {
        Name = input.Name + ".advice",
        Title = input.Title,
        Says = () => LeadOf(AdviceLetter.Of(advice, options)),
        Text = () => AdviceText.Of(advice, options),
        Markdown = () => AdviceMarkdown.Of(advice, options),
        Html = () => AdviceHtml.Of(advice, options),
    };

    public static PageReport Choice(
        CaseInput input, BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options) => new()
        {
            Name = input.Name + ".choice",
            Title = input.Title,
            Says = () => LeadOf(ChoiceReport.Checked(choice, settings, options)),
            Text = () => ChoiceText.Of(choice, settings, options),
            Markdown = () => ChoiceMarkdown.Of(choice, settings, options),
            Html = () => ChoiceHtml.Of(choice, settings, options),
        };

    public static PageReport Quote(
        CaseInput input, BoltChoice choice, StockFile stock, QuoteTerms terms, ReportOptions options) => new()
        {
            Name = input.Name + ".quote",
            Title = input.Title,
            Says = () => LeadOf(QuoteReport.Of(choice, stock, terms, options)),
            Text = () => QuoteHtml.Text(choice, stock, terms, options),
            Markdown = () => QuoteHtml.Markdown(choice, stock, terms, options),
            Html = () => QuoteHtml.Of(choice, stock, terms, options),
        };

    public static PageReport Clutch(
        CaseInput input, ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options) => new()
        {
            Name = input.Name + ".clutch",
            Title = input.Title,
            Says = () => LeadOf(ClutchReport.Checked(review, procedures, options)),
            Text = () => ClutchText.Of(review, procedures, options),
            Markdown = () => ClutchMarkdown.Of(review, procedures, options),
            Html = () => ClutchHtml.Of(review, procedures, options),
            More = () => [new(input.Name + ".clutch-calculation.html", CalculationSheet.Html(review, options))],
        };

    public static PageReport Simulation(CaseInput input, CaseSimulation run, ReportOptions options)
    {
        string name = input.Name + "." + run.Event.ToString().ToLowerInvariant();
        return new PageReport
        {
            Name = name,
            Title = input.Title,
            Says = () => LeadOf(run.Check is { } check ? SimulationReport.Checked(check, run.Span, options)
                : SimulationReport.OfMissing(run.Event, run.Missing, run.Machine, options)),
            Text = () => SimulationText(run, options),
            Markdown = () => SimulationMarkdown(run, options),
            Html = () => run.Check is { } check ? SimulationHtml.Of(check, run.Span, options)
                : SimulationHtml.OfMissing(run.Event, run.Missing, run.Machine, options),
            More = () => MoreOf(run, name, options),
        };
    }

    private static string LeadOf(IReadOnlyList<ReportBlock> blocks) =>
        blocks.FirstOrDefault(b => b.Kind == ReportBlockKind.Lead)?.Text ?? string.Empty;

    private static string SimulationText(CaseSimulation run, ReportOptions options) => run.Check is { } check
        ? Driveline.Reports.SimulationText.Of(check, run.Span, options)
        : Driveline.Reports.SimulationText.OfMissing(run.Event, run.Missing, run.Machine, options);

    private static string SimulationMarkdown(CaseSimulation run, ReportOptions options) => run.Check is { } check
        ? Driveline.Reports.SimulationMarkdown.Of(check, run.Span, options)
        : Driveline.Reports.SimulationMarkdown.OfMissing(run.Event, run.Missing, run.Machine, options);

    // When there is no curve to draw, the report alone says why.
    private static IEnumerable<KeyValuePair<string, string>> MoreOf(CaseSimulation run, string name, ReportOptions options)
    {
        yield return new(name + ".txt", SimulationText(run, options));
        if (run.Check is { } check && (check.With ?? check.Without) is not null)
        {
            yield return new(name + ".svg", SimulationPicture.Svg(check, options));
            yield return new(name + ".csv", SimulationCsv.Of(check, options));
        }
    }

    private static IEnumerable<KeyValuePair<string, string>> Calculations(CaseInput input, ReportOptions options) =>
        input.Verdict.Question.Chain.Devices.All(d => d.Sheet().Count == 0) ? []
            : [
                new(input.Name + ".calculation.md", CalculationSheet.Markdown(input.Verdict, options)),
                new(input.Name + ".calculation.html", CalculationSheet.Html(input.Verdict, options)),
            ];
}
