using System.Text.Json;
using System.Text.RegularExpressions;
using Driveline.Cases.Questions;
using Driveline.Findings;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Where US units are asked for nothing metric is left but what a case says itself and names that are metric by nature.</summary>
public partial class UsUnitsTests
{
    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [MemberData(nameof(Demos))]
    public void EveryText_InUsUnits_HoldsNothingMetric(string name)
    {
        ReportOptions options = ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary);
        foreach ((string verb, string text) in Texts(name, options))
        {
            Assert.True(!Metric().IsMatch(Foreign(text, name)), verb + ": " + string.Join(", ",
                Metric().Matches(Foreign(text, name)).Select(m => "…" + m.Value).Distinct()));
        }
    }

    [Fact]
    public void EveryTextWithAMetricFigure_HasAnotherInUsUnits() => Assert.DoesNotContain(
        Driveline.Wording.Texts.English.Codes, c => !c.EndsWith(".us", StringComparison.Ordinal)
            && FixedMetric().IsMatch(Driveline.Wording.Texts.English.Of(c))
            && Driveline.Wording.Texts.English.Of(c, DisplayUnits.UsCustomary) == Driveline.Wording.Texts.English.Of(c));

    [Fact]
    public void TipSpeed_InUsUnits_IsInMilesAnHour()
    {
        // hand: 100 m/s / 0.44704 = 223.7, 96.5 / 0.44704 = 215.9
        Finding fast = Finding.Of("blade.tipFasterThanLawnLimit", Severity.Note).With("speedMph", QuantityKind.Number, 223.694)
            .With("comparedMph", QuantityKind.Number, 215.865);
        Assert.Contains("224 mph, faster than the 216 mph", Driveline.Wording.Texts.English.Of(fast, DisplayUnits.UsCustomary),
            StringComparison.Ordinal);
    }

    private static IEnumerable<(string Verb, string Text)> Texts(string name, ReportOptions options)
    {
        yield return ("advise", AdviceText.Of(DemoCases.Advice(name).Advice!, options));
        yield return ("questions", QuestionsText.Of(DemoCases.Advice(name).Advice!, options));
        yield return ("assess", VerdictText.Of(DemoCases.Verdict(name), options));
        yield return ("sheet", CalculationSheet.Markdown(DemoCases.Verdict(name), options));
        yield return ("choose", ChoiceText.Of(DemoCases.Choice(name), DemoCases.Settings(name), options));
        foreach (CaseClutch clutch in CaseClutch.AllOf(DemoCases.Read(name)))
        {
            yield return ("clutch", ClutchText.Of(clutch.Review(), clutch.Review().Procedures, options));
        }

        if (DemoCases.Simulation(name) is { Check: { } check })
        {
            yield return ("simulate", SimulationText.Of(check, options));
        }
    }

    // What the case says in its own words, and sizes that are metric by name: a pin of 8 mm, M10.
    private static string Foreign(string text, string name)
    {
        text = Regex.Replace(text, @"\s+", " ");
        using JsonDocument file = JsonDocument.Parse(DemoCases.Json(name));
        foreach (string own in Strings(file.RootElement).Where(s => s.Length > 2).OrderByDescending(s => s.Length))
        {
            text = text.Replace(own, string.Empty, StringComparison.Ordinal);
        }

        return Named().Replace(text, string.Empty);
    }

    private static IEnumerable<string> Strings(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.String => [json.GetString()!],
        JsonValueKind.Object => json.EnumerateObject().SelectMany(m => Strings(m.Value)),
        JsonValueKind.Array => json.EnumerateArray().SelectMany(Strings),
        _ => [],
    };

    [GeneratedRegex("You wrote: “[^”]*”|(pin|rod|bolt|thread) [0-9.]+ mm|M[0-9]+(x[0-9.]+)?")]
    private static partial Regex Named();

    [GeneratedRegex(@".{0,20}\b(mm|cm|m/s|km/h|N·m|kN|kW|kg|kPa|MPa|GPa|[0-9] m|[0-9] N|min⁻¹|[Mm]illimet(re|er)s?|[Mm]et(re|er)s"
        + @"|kilo[a-z]+)\b|°C")]
    private static partial Regex Metric();

    [GeneratedRegex(@"[0-9}] (mm|cm|m|m/s|km/h|N·m|kN|kW|kg|kPa|MPa|°C)\b|[Mm]illimet(re|er)")]
    private static partial Regex FixedMetric();
}
