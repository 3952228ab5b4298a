using System.Text.Json;
using System.Text.RegularExpressions;
using Driveline.Cases.Questions;
using Driveline.Loads;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>A Spanish letter holds no English but the names that its case gives.</summary>
public partial class SpanishLetterTests
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Letter_InSpanish_HasNoEnglishWord(string name)
    {
        ReportOptions options = ReportOptions.Default.WithTitle(DemoCases.Read(name).Title).WithLanguage(Language.Spanish);
        string text = Blank().Replace(AdviceText.Of(DemoCases.Advice(name).Advice!, options), " ");
        using JsonDocument file = JsonDocument.Parse(DemoCases.Json(name));
        foreach (string own in Texts(file.RootElement).Where(t => t.Length > 2).OrderByDescending(t => t.Length))
        {
            text = text.Replace(own, string.Empty, StringComparison.OrdinalIgnoreCase);
        }

        // What is quoted of long notes ends before they do.
        text = Quoted().Replace(text, string.Empty);
        Assert.Empty(English().Matches(text).Select(m => m.Value).Distinct());
    }

    [Theory]
    [InlineData("vega-honda-pernos-blandos")]
    [InlineData("cerro-pardo-tocon")]
    public void SpanishDemo_EveryText_HasNoEnglishWordAtAll(string name)
    {
        ReportOptions options = ReportOptions.Default.WithTitle(DemoCases.Read(name).Title).WithLanguage(Language.Spanish);
        string[] texts = [AdviceText.Of(DemoCases.Advice(name).Advice!, options), VerdictText.Of(DemoCases.Verdict(name), options),
            ChoiceText.Of(DemoCases.Choice(name), DemoCases.Settings(name), options),
            QuestionsText.Of(DemoCases.Advice(name).Advice!, options), Simulated(name, options),
            CalculationSheet.Markdown(DemoCases.Verdict(name), options), VerdictHtml.Of(DemoCases.Verdict(name), options)];
        Assert.All(texts.Select(t => Markup().Replace(t.Replace("Driveline 0", string.Empty, StringComparison.Ordinal), " ")),
            text => Assert.Empty(English().Matches(text).Select(m => m.Value).Distinct()));
    }

    private static string Simulated(string name, ReportOptions options)
    {
        CaseSimulation simulation = DemoCases.Simulation(name);
        return simulation.Check is { } check ? SimulationText.Of(check, options)
            : SimulationText.OfMissing(SimulatedEvent.Engagement, simulation.Missing, options);
    }

    private static IEnumerable<string> Texts(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.String => [json.GetString()!],
        JsonValueKind.Object => json.EnumerateObject().SelectMany(m => Texts(m.Value)),
        JsonValueKind.Array => json.EnumerateArray().SelectMany(Texts),
        _ => [],
    };

    [GeneratedRegex("<style>.*?</style>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Markup();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blank();

    [GeneratedRegex("Usted escribe: «[^»]*»")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\b(the|and|of|with|bolts?|not|known|is|are|from|it|its|shaft|clutch|gearbox|how|what|this|that|which|by|for|or|out|"
        + @"only|engine|driveline|guard|work|likelihoods?|minutes|nobody|table|you|your)\b", RegexOptions.IgnoreCase)]
    private static partial Regex English();
}
