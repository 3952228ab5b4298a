using System.Globalization;
using System.Xml.Linq;
using Driveline.Cases.Questions;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;
using DisplayUnits = Driveline.Wording.DisplayUnits;

namespace Driveline.Tests.Reports;

/// <summary>What a simulated event prints, draws and lists.</summary>
public class SimulationReportTests
{
    private static readonly SimulationCheck Rock = Check("ravensmoor-rock");

    [Fact]
    public void Text_OfAStrike_SaysWhatActsAndWhatEachPartCarries()
    {
        string text = SimulationText.Of(Rock, ReportOptions.Default.WithTitle("A rock"));
        Assert.Contains("The shear bolt broke after ", text, StringComparison.Ordinal);
        Assert.Contains("drive tube", text, StringComparison.Ordinal);
        Assert.Contains("1900 … 2400", text, StringComparison.Ordinal);
        Assert.All(Rock.Cautions, c => Assert.Contains(Texts.English.Of(c.Code)[..25], text, StringComparison.Ordinal));
        Assert.DoesNotContain("{", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_StoppedByItsCaller_DrawsNoPicture()
    {
        var stopped = new CancellationToken(true);
        Assert.ThrowsAny<OperationCanceledException>(() => SimulationHtml.Of(Rock, null, ReportOptions.Default, stopped));
        Assert.ThrowsAny<OperationCanceledException>(() => SimulationHtml.Fragment(Rock, ReportOptions.Default, stopped));
    }

    [Theory]
    [InlineData("ravensmoor-rock", Language.English, "The shear bolt broke after 0.37 ms. Whether a part was overloaded is not certain.")]
    [InlineData("ravensmoor-rock", Language.Spanish,
        "El perno fusible se rompió a los 0,37 ms. No es seguro si alguna pieza sufrió una sobrecarga.")]
    [InlineData("ravensmoor-soft-branch", Language.English, "No protective device acted. Nothing was overloaded.")]
    [InlineData("ravensmoor-rusted-clutch-rock", Language.English, "No protective device acted. Overloaded, so expect damage: drive tube.")]
    [InlineData("ravensmoor-rusted-clutch-rock", Language.Spanish,
        "No actuó ningún dispositivo de protección. Sobrecarga; cabe esperar daños en: drive tube.")]
    [InlineData("ravensmoor-pan-on-stump", Language.English, "If the pan wedges and stops the rotor: The shear bolt broke")]
    [InlineData("ravensmoor-pan-on-stump", Language.Spanish, "Si el plato se acuña y para el rotor: El perno fusible")]
    public void Text_OfADemo_AnswersTheOwner(string name, Language language, string words)
    {
        string text = SimulationText.Of(Check(name), ReportOptions.Default.WithLanguage(language));
        Assert.Contains(words, string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_LimitOfAPartTakenAway_NeverSaysThatNothingWasOverloaded()
    {
        string json = DemoCases.Json("ravensmoor-rock");
        string without = json.Replace(
            ", \"damagedAt\": { \"low\": \"1900 N.m\", \"expected\": \"2100 N.m\", \"high\": \"2400 N.m\" }", string.Empty,
                StringComparison.Ordinal);
        Assert.NotEqual(json, without);
        string text = SimulationText.Of(CaseSimulation.Of(CaseReaderTests.ReadGood(without)).Check!);
        Assert.DoesNotContain("Nothing else was overloaded", text, StringComparison.Ordinal);
        Assert.Contains("How much these take is not known: drive tube", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ravensmoor-rock", Language.English, "time since the start, ms")]
    [InlineData("ravensmoor-rock", Language.Spanish, "tiempo desde el comienzo, ms")]
    [InlineData("ravensmoor-clutch-let-in-gently", Language.English, "time since the start, s")]
    public void Picture_TimeAxis_IsInMillisecondsWhereShort(string name, Language language, string words) =>
        Assert.Contains(
            ">" + words + "<", SimulationPicture.Svg(Check(name), ReportOptions.Default.WithLanguage(language)), StringComparison.Ordinal);

    [Fact]
    public void Picture_EqualCurves_ShowTheDashesOnTop()
    {
        string svg = SimulationPicture.Svg(Check("ravensmoor-soft-branch"));
        int full = svg.IndexOf("dl-s-work\" stroke-width=\"2.2\"", StringComparison.Ordinal);
        int dashed = svg.IndexOf("dl-s-overlap\" stroke-width=\"1.6\"", StringComparison.Ordinal);
        int trip = SimulationPicture.Svg(Rock).IndexOf("class=\"dl-s-trip\"", StringComparison.Ordinal);
        Assert.InRange(full, 0, dashed);
        Assert.InRange(trip, 0, SimulationPicture.Svg(Rock).IndexOf("dl-s-work\" stroke-width=\"2.2\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Text_OfABlowThatNothingBounds_NeverSaysNoAndLeavesNoBlank()
    {
        string[] lines = SimulationText.Of(Rock, ReportOptions.Default.WithTextWidth(200)).Split('\n');
        Assert.EndsWith(
            "not by this calculation", lines.Single(l => l.StartsWith("drive tube ", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.EndsWith(
            "we don't know", lines.Single(l => l.StartsWith("blades and carrier ", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.DoesNotContain(lines, l => l.EndsWith(" No", StringComparison.Ordinal));
    }

    [Fact]
    public void Text_InSpanish_HasNoEnglishLine()
    {
        string text = SimulationText.Of(Rock, ReportOptions.Default.WithLanguage(Language.Spanish));
        Assert.Contains("Un golpe en el trabajo", text, StringComparison.Ordinal);
        Assert.DoesNotContain("protection", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("What was", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_InUsUnits_ShowsPoundFeet() =>
        Assert.Contains(
            "lb·ft", SimulationText.Of(Rock, ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary)), StringComparison.Ordinal);

    [Theory]
    [InlineData("ravensmoor-rock")]
    [InlineData("ravensmoor-clutch-let-in-gently")]
    [InlineData("ravensmoor-pan-on-stump")]
    public void Picture_OfADemo_IsWellFormedAndTheSameTwice(string name)
    {
        SimulationCheck check = Check(name);
        string svg = SimulationPicture.Svg(check, ReportOptions.Default.WithTitle("<b>&\"'"));
        XElement root = XDocument.Parse(svg).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        Assert.Equal(svg, SimulationPicture.Svg(check, ReportOptions.Default.WithTitle("<b>&\"'")));
    }

    [Fact]
    public void Picture_OfAStrike_MarksTripAndLimits()
    {
        string svg = SimulationPicture.Svg(Rock);
        Assert.Contains("shear bolt acts", svg, StringComparison.Ordinal);
        Assert.Contains("1900 … 2400 N·m", svg, StringComparison.Ordinal);
        Assert.Contains("without protection", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_OfAStrike_HasUnitsAndEqualColumnsAndThePeaks()
    {
        string[] lines = SimulationCsv.Of(Rock).TrimEnd('\n').Split('\n');
        Assert.StartsWith("time [s],\"", lines[0], StringComparison.Ordinal);
        string[] heads = lines[0].Split("\",\"");
        Assert.Equal(2 * Rock.Loads.Count, heads.Length);
        Assert.Equal(2002, lines.Length);
        double[][] rows = [.. lines.Skip(1).Select(l => l.Split(',').Select(c => double.Parse(c, CultureInfo.InvariantCulture)).ToArray())];
        Assert.All(rows, r => Assert.Equal(1 + (2 * Rock.Loads.Count), r.Length));
        Assert.Equal(0, rows[0][0]);
        Assert.Equal(300, rows[0][1], 6);   // T₀ of the case
        int tube = Rock.Loads.ToList().FindIndex(l => l.Element.Name == "drive tube");
        double peak = Rock.Loads[tube].WithoutProtection!.Value.NewtonMeters;
        Assert.InRange(rows.Max(r => r[2 + (2 * tube)]), 0.98 * peak, 1.000001 * peak);
    }

    [Fact]
    public void Csv_NameLikeAFormula_IsNotOne()
    {
        string json = DemoCases.Json("ravensmoor-rock").Replace("\"drive tube\"", "\"=1+1,\\\"x\\\"\"", StringComparison.Ordinal);
        string csv = SimulationCsv.Of(CaseSimulation.Of(CaseReaderTests.ReadGood(json)).Check!);
        Assert.Contains("\"'=1+1,\"\"x\"\", with protection [N.m]\"", csv, StringComparison.Ordinal);
    }

    private static SimulationCheck Check(string name) => DemoCases.Simulation(name).Check!;
}
