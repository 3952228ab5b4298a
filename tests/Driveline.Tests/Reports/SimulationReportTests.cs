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
        Assert.Contains("Shear bolt acts ", text, StringComparison.Ordinal);
        Assert.Contains("drive tube", text, StringComparison.Ordinal);
        Assert.Contains("1900 … 2400", text, StringComparison.Ordinal);
        Assert.All(Rock.Cautions, code => Assert.Contains(Texts.English.Of(code)[..25], text, StringComparison.Ordinal));
        Assert.DoesNotContain("{", text, StringComparison.Ordinal);
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
        Assert.Contains("lbf·ft", SimulationText.Of(Rock, ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary)), StringComparison.Ordinal);

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

    private static SimulationCheck Check(string name) => CaseSimulation.Of(DemoCases.Read(name)).Check!;
}
