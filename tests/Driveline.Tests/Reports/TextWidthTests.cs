using Driveline.Advice;
using Driveline.Cases.Questions;
using Driveline.Cases.TorsionModels;
using Driveline.Fasteners;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Torsion;
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
        { Language.English, DisplayUnits.UsCustomary, 120 },
        { Language.Spanish, DisplayUnits.Metric, 120 },
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

    [Theory]
    [MemberData(nameof(Windows))]
    public void EveryText_WithoutACase_FitsTheWindow(Language language, DisplayUnits units, int columns)
    {
        ReportOptions options = ReportOptions.Default.WithLanguage(language).WithUnits(units).WithTextWidth(columns);
        const string Model = """
            { "duration": 0.2, "rotors": [ { "name": "engine", "inertia": 1.1 }, { "name": "blades and what holds them", "inertia": 4 } ],
              "shafts": [ { "name": "drive tube with a name that nobody would give it", "from": "engine",
                "to": "blades and what holds them", "stiffness": 8000, "damping": 0.4, "breaksAt": 500 } ],
              "obstacles": [ { "name": "stump", "rotor": "blades and what holds them", "at": 0.02, "stiffness": 9000, "damping": 4 } ],
              "start": { "speed": 56.5 } }
            """;
        TransientResult result = TorsionModelReader.Read(Model).Model!.Run();
        string[] texts =
        [
            .. new[] { 0, 3, 5, 6 }.Select(lines => IdentifyText.Of(HeadMarks.Identify(lines, ScrewThread.Parse("1/2 in")), options)),
            StrengthText.Of(BoltStrength.Of(SaeJ429.Grade5, ScrewThread.Parse("1/2-13 UNC")), options),
            StrengthText.Of(BoltStrength.Of(Iso898.Class8_8, ScrewThread.Parse("M10")), options),
            TransientText.Of(result, options.WithTitle("A model with a long title: " + new string('x', 90))),
        ];
        Assert.DoesNotContain(texts.SelectMany(t => t.Split('\n')), l => l.Length > columns);
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
        yield return ("questions", QuestionsText.Of(DemoCases.Advice(name).Advice!, options));
        foreach (CaseClutch clutch in CaseClutch.AllOf(DemoCases.Read(name)))
        {
            yield return ("clutch", ClutchText.Of(clutch.Review(), clutch.Review().Procedures, options));
        }

        if (DemoCases.Simulation(name) is { Check: { } check })
        {
            yield return ("simulate", SimulationText.Of(check, options));
        }
    }
}
