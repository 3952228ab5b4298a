using Driveline.Advice;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;

namespace Driveline.Tests.Reports;

/// <summary>Every text fits the window it is made for.</summary>
public class TextWidthTests
{
    public static TheoryData<Language, DisplayUnits, int> Windows => new()
    {
        { Language.English, DisplayUnits.UsCustomary, 80 },
        { Language.Spanish, DisplayUnits.Metric, 80 },
        { Language.English, DisplayUnits.Metric, 60 },
        { Language.Spanish, DisplayUnits.Metric, 60 },
    };

    [Theory]
    [MemberData(nameof(Windows))]
    public void EveryText_OfEveryDemo_FitsTheWindow(Language language, DisplayUnits units, int columns)
    {
        ReportOptions options = ReportOptions.Default.WithLanguage(language).WithUnits(units).WithTextWidth(columns);
        string[] wide = [.. DemoCases.Names.SelectMany(n => Texts(n, options.WithTitle(DemoCases.Read(n).Title))
            .SelectMany(t => t.Text.Split('\n').Where(l => l.Length > columns).Select(l => n + ", " + t.Verb + ": " + l)))];
        Assert.Empty(wide);
    }

    [Fact]
    public void Table_TooWide_IsStackedUnderItsNames()
    {
        string text = AdviceText.Of(DemoCases.Advice("larkfield-soft-bolts").Advice!, ReportOptions.Default.WithTextWidth(45));
        Assert.Contains("- The soft bolt as now\n    Lowest: ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrapped_NumberAndUnit_StayTogether()
    {
        OwnerAdvice advice = OwnerAdvice.On(Complaint.Of(Symptom.BreaksOften)).WithHead(LetterHead.Empty
            .WithOwnWords("It happens at the lower end of all loads here 450 N·m and more."));
        // "You wrote: “It happens at the lower end of all loads here 450" has 59 characters and would end the line.
        string text = AdviceText.Of(advice, ReportOptions.Default.WithTextWidth(60));
        Assert.Contains("here\n450 N·m", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(39)]
    [InlineData(201)]
    public void TextWidth_OutsideItsRange_IsRefused(int columns) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ReportOptions.Default.WithTextWidth(columns));

    private static IEnumerable<(string Verb, string Text)> Texts(string name, ReportOptions options)
    {
        yield return ("advise", AdviceText.Of(DemoCases.Advice(name).Advice!, options));
        yield return ("assess", VerdictText.Of(DemoCases.Verdict(name), options));
        yield return ("choose", ChoiceText.Of(DemoCases.Choice(name), DemoCases.Settings(name), options));
        if (DemoCases.Simulation(name) is { Check: { } check })
        {
            yield return ("simulate", SimulationText.Of(check, options));
        }
    }
}
