using System.Xml.Linq;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Tests.Cases;
using Driveline.Wording;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Reports;

public class WorkedSheetTests
{
    private static readonly XNamespace MathMl = "http://www.w3.org/1998/Math/MathML";

    [Fact]
    public void Sheet_OfABolt_PutsTheNumbersIn()
    {
        // SAE 5, 3/8-16, threads in both planes or shank as the case says; 15.875 mm: 1 1/4 in shaft.
        string text = CalculationSheet.Markdown(DemoCases.Verdict("thornbeck-bolt-right"), ReportOptions.Default);
        Assert.Contains("= m · A · τ · r = 2 · ", text, StringComparison.Ordinal);
        Assert.Contains("15.88 mm", text, StringComparison.Ordinal);
        Assert.Contains("MPa", text, StringComparison.Ordinal);
        Assert.Contains("T\\_part / T\\_high", text, StringComparison.Ordinal);
        Assert.Contains("T\\_low / T\\_peak", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_OfWorkByItsPower_BeginsWithPowerSpeedAndFactor()
    {
        // 22 kW at 1000 rpm, 104.72 rad/s: 210.1 N·m; its peaks are 1.3 to 2.2 times that, at most 462.2 N·m.
        string text = CalculationSheet.Markdown(DemoCases.Verdict("saltmere-spreader-pin"), ReportOptions.Default);
        Assert.Contains("mean power of the work at the PTO", text, StringComparison.Ordinal);
        Assert.Contains("T\\_mean = P / ω = 22000 W / 104.7 rad/s = 210.1 N·m", text, StringComparison.Ordinal);
        Assert.Contains("T\\_peak = T\\_mean · f = 210.1 N·m · 2.2 = 462.2 N·m", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_OfWorkAboveWhatStallsTheEngine_EndsAtIt()
    {
        // 30 kW at 540 rpm would be 530.5 N·m; 20 kW of PTO power with 25 % of reserve stall at 442.1 N·m; twice that is 884.2 N·m.
        WorkPeak work = WorkPeak.FromNeed(
            PowerNeed.Stated(PowerBand.Exactly(Power.FromKilowatts(30), Given)), Rated, RatioBand.Exactly(2, Given),
            EngineSide.OfPtoPower(PowerBand.Exactly(Power.FromKilowatts(20), Given), Rated)
                .WithTorqueReserve(RatioBand.Exactly(0.25, Given)));
        IReadOnlyList<CalculationLine> high = [.. work.Sheet().Where(l => l.End == SheetEnd.Highest)];
        Assert.Contains(high, l => l.Formula.Code == "cappedMean");
        Assert.Equal(884.2, high[^1].Value, 0.1);
        Assert.Equal(work.Torque.High!.Value.NewtonMeters, high[^1].Value, 1e-9);
    }

    [Fact]
    public void Sheet_OfStatedPeaks_HasNoSum() => Assert.Empty(WorkPeak.Stated(Nm(500)).Sheet());

    [Fact]
    public void Sheet_OfABasisToldInWords_SetsItApart() => Assert.Contains(
        "SAE J429, in Mechanical Engineering Design, 5th ed., 1989, SAE specifications for steel bolts, p. 341",
        CalculationSheet.Markdown(DemoCases.Verdict("thornbeck-bolt-right"), ReportOptions.Default), StringComparison.Ordinal);

    [Fact]
    public void Sheet_InUsUnits_HasThemThroughout()
    {
        string text = CalculationSheet.Markdown(
            DemoCases.Verdict("thornbeck-bolt-right"), ReportOptions.Default.WithUnits(DisplayUnits.UsCustomary));
        Assert.Contains(" ksi", text, StringComparison.Ordinal);
        Assert.Contains("0.625 in", text, StringComparison.Ordinal);   // half of 1 1/4 in
        Assert.DoesNotContain("MPa", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("thornbeck-bolt-right")]
    [InlineData("dunmarsh-clutch-well-set")]
    [InlineData("wickerby-clutch-too-hot")]
    [InlineData("millbrook-feed-auger")]
    [InlineData("ashby-lane-facts-missing")]
    public void Page_OfTheSheet_HasWellFormedMathAndAPlaceToSign(string demo)
    {
        string html = CalculationSheet.Html(DemoCases.Verdict(demo), ReportOptions.Default.WithTitle("<b>"));
        foreach (string math in html.Split("<math").Skip(1)
            .Select(m => "<math" + m[..(m.IndexOf("</math>", StringComparison.Ordinal) + 7)]))
        {
            Assert.Equal(MathMl + "math", XElement.Parse(math).Name);
        }

        Assert.Contains("class=\"dl-sign\"", html, StringComparison.Ordinal);
        Assert.Contains("<h1>&lt;b&gt;</h1>", html, StringComparison.Ordinal);
    }
}
