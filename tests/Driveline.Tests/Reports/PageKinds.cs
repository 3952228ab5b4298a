using Driveline.Cases;
using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Reports;
using Driveline.Reports.Charts;
using Driveline.Reports.Quotes;
using Driveline.Tests.Cases;

namespace Driveline.Tests.Reports;

/// <summary>Every kind of page and picture that a demo can be shown as.</summary>
internal static class PageKinds
{
    private static readonly StockFile Stock = StockFile.Parse(
        """
        sku,designation,grade,length,coating,price,currency
        B-0301,3/8-16 x 2-1/2,SAE 2,,plain,0.52,USD
        B-0302,3/8-16 x 2-1/2,SAE 5,,zinc,0.775,USD
        B-0303,3/8-16 x 2-1/2,SAE 8,,zinc,1.35,USD
        X-1,banana,SAE 5,,,1,USD
        """);

    /// <summary>Kinds of pages, each with a demo that has it.</summary>
    public static readonly IReadOnlyDictionary<string, string> Pages = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["report"] = "thornbeck-bolt-right",
        ["calculation"] = "thornbeck-bolt-right",
        ["clutch-calculation"] = "dunmarsh-clutch-well-set",
        ["clutch"] = "dunmarsh-clutch-well-set",
        ["choice"] = "thornbeck-too-strong",
        ["quote"] = "thornbeck-bolt-right",
        ["strike"] = "ravensmoor-rock",
        ["advice"] = "larkfield-soft-bolts",
    };

    /// <summary>Kinds of pictures, each with a demo that has it.</summary>
    public static readonly IReadOnlyDictionary<string, string> Pictures = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["ladder"] = "thornbeck-too-strong",
        ["planes"] = "thornbeck-bolt-right",
        ["grades"] = "thornbeck-bolt-right",
        ["setting"] = "dunmarsh-clutch-well-set",
        ["section"] = "dunmarsh-clutch-well-set",
        ["temperature"] = "dunmarsh-clutch-well-set",
        ["traces"] = "ravensmoor-rock",
        ["costs"] = "larkfield-soft-bolts",
    };

    public static string Of(string demo, string kind, string form, ReportOptions options) => (kind, form) switch
    {
        ("report", "html") => VerdictHtml.Of(DemoCases.Verdict(demo), options),
        ("report", "md") => VerdictMarkdown.Of(DemoCases.Verdict(demo), options),
        ("calculation", "html") => CalculationSheet.Html(DemoCases.Verdict(demo), options),
        ("calculation", "md") => CalculationSheet.Markdown(DemoCases.Verdict(demo), options),
        ("clutch-calculation", "html") => CalculationSheet.Html(ReviewOf(demo), options),
        ("clutch-calculation", "md") => CalculationSheet.Markdown(ReviewOf(demo), options),
        ("clutch", "html") => ClutchHtml.Of(ReviewOf(demo), ReviewOf(demo).Procedures, options),
        ("clutch", "md") => ClutchMarkdown.Of(ReviewOf(demo), ReviewOf(demo).Procedures, options),
        ("choice", "html") => ChoiceHtml.Of(DemoCases.Choice(demo), DemoCases.Settings(demo), options),
        ("choice", "md") => ChoiceMarkdown.Of(DemoCases.Choice(demo), DemoCases.Settings(demo), options),
        ("quote", "html") => QuoteHtml.Of(QuotedOf(demo), Stock, QuoteTerms.Default.WithLabour(45.5m), options),
        ("quote", "md") => QuoteHtml.Markdown(QuotedOf(demo), Stock, QuoteTerms.Default.WithLabour(45.5m), options),
        ("strike", "html") => SimulationHtml.Of(DemoCases.Simulation(demo).Check!, DemoCases.Simulation(demo).Span, options),
        ("strike", "md") => SimulationMarkdown.Of(DemoCases.Simulation(demo).Check!, DemoCases.Simulation(demo).Span, options),
        ("advice", "html") => AdviceHtml.Of(DemoCases.Advice(demo).Advice!, options),
        ("advice", "md") => AdviceMarkdown.Of(DemoCases.Advice(demo).Advice!, options),
        ("costs", _) => CostPicture.Years(DemoCases.Advice(demo).Advice!.Costs, options)!,
        ("ladder", _) => TorqueLadderPicture.Svg(DemoCases.Verdict(demo), options),
        ("setting", _) => ClutchPicture.Setting(ReviewOf(demo).Torque, null, null, options)!,
        ("temperature", _) => ClutchPicture.Temperature(ReviewOf(demo), options)!,
        ("section", _) => ClutchPicture.Section(ReviewOf(demo).Torque.Clutch!, options)!,
        ("planes", _) => BoltPicture.Planes(DemoCases.Verdict(demo).Question.Chain.Devices.OfType<ShearBoltDevice>().First(), options)!,
        ("grades", _) => BoltPicture.Grades(DemoCases.Verdict(demo), options)!,
        ("traces", _) => SimulationPicture.Svg(DemoCases.Simulation(demo).Check!, options),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such page."),
    };

    private static ClutchReview ReviewOf(string demo) => CaseAssessment.Of(DemoCases.Json(demo)).Clutches()[0].Review();

    private static BoltChoice QuotedOf(string demo) =>
        BoltChoice.For(DemoCases.Verdict(demo).Question, ChoiceTerms.Default.WithStock(Stock.List));
}
