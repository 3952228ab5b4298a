using System.Reflection;
using System.Xml.Linq;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.Reports.Sheets;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using Driveline.Wording;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Reports;

public class WorkedSheetTests
{
    private static readonly XNamespace MathMl = "http://www.w3.org/1998/Math/MathML";

    [Theory]
    [InlineData("m · A · τ · r", "<mi>m</mi><mo>·</mo><mi>A</mi><mo>·</mo><mi>τ</mi><mo>·</mo><mi>r</mi>")]
    [InlineData("T / (m · A)",
        "<mfrac><mrow><mi>T</mi></mrow><mrow><mi>m</mi><mo>·</mo><mi>A</mi></mrow></mfrac>")]
    [InlineData("m · k²", "<mi>m</mi><mo>·</mo><msup><mrow><mi>k</mi></mrow><mn>2</mn></msup>")]
    [InlineData("κ · R_m", "<mi>κ</mi><mo>·</mo><msub><mi>R</mi><mtext>m</mtext></msub>")]
    public void Formula_OfAStep_BecomesMathematics(string formula, string math) => Assert.Equal(math, MathText.Read(formula, _ => null));

    [Theory]
    [InlineData("of the bolt")]
    [InlineData("area of one shear plane")]
    [InlineData("by grade and size")]
    [InlineData("hub and flange drag, high end only")]
    [InlineData("(m")]
    [InlineData("")]
    public void Words_OfAStep_AreNoMathematics(string formula) => Assert.Null(MathText.Read(formula, _ => null));

    [Fact]
    public void EveryFormula_OfTheLibrary_IsWellFormedMathematicsOrWords()
    {
        string[] formulas =
        [
            .. typeof(CalculationStep).Assembly.GetTypes().SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public
                | BindingFlags.NonPublic)).Where(f => f.FieldType == typeof(CalculationStep) && !f.DeclaringType!.ContainsGenericParameters)
                .Select(f => ((CalculationStep)f.GetValue(null)!).Formula),
        ];
        Assert.True(formulas.Length > 50, "the search must see the steps");
        string[] math = [.. formulas.Select(f => MathText.Read(f, _ => null)).OfType<string>()];
        Assert.True(math.Length > formulas.Length / 2, math.Length + " of " + formulas.Length);
        Assert.All(math, m => XElement.Parse("<math>" + m + "</math>"));
    }

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
    public void EveryExcuse_NamesAPublicResultWithoutASheet()
    {
        string[] stale =
        [
            .. ExcusedResults.All.Keys.Where(n =>
                typeof(CalculationStep).Assembly.GetTypes().FirstOrDefault(t => t.Name == n) is not { } type
                || (!typeof(ProtectiveDevice).IsAssignableFrom(type) && type.GetMethod("Sheet", Type.EmptyTypes) is not null)),
        ];
        Assert.True(stale.Length == 0, string.Join("\n", stale));
    }

    [Fact]
    public void Sheet_OfABasisToldInWords_SetsItApart() => Assert.Contains(
        "SAE J429, text of 2011 to 2014, Table 1",
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

    [Fact]
    public void EveryResult_WithASheet_HasARowBelow()
    {
        string[] types =
        [
            .. typeof(CalculationStep).Assembly.GetTypes().Where(t => !typeof(ProtectiveDevice).IsAssignableFrom(t)
                && t.GetMethod("Sheet", Type.EmptyTypes) is { IsStatic: false }).Select(t => t.Name).Order(StringComparer.Ordinal),
        ];
        Assert.Equal(types, Results.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void EveryStep_OfEverySheet_FollowsFromTheNumbersPutIn()
    {
        int worked = 0;
        IReadOnlyList<CalculationLine>[] sheets =
        [
            .. Results.Values.Select(r => r().Lines), DeviceOf<SlipClutchDevice>("dunmarsh-clutch-well-set").Sheet(),
            DeviceOf<SlipClutchDevice>("dunmarsh-clutch-well-set").SlipTorque.SpringSheet(),
            EngagementTorque.Of(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(1100)), Rated).WithRotor(KgM2(2))
                .WithLoad(Nm(50)).WithRise(TimeBand.Exactly(Duration.FromSeconds(0.4), Given)).Sheet(),
        ];
        foreach (IGrouping<SheetEnd, CalculationLine> end in sheets.SelectMany(s => s.GroupBy(l => l.End)))
        {
            var values = new Dictionary<string, double>(StringComparer.Ordinal);
            foreach (CalculationLine line in end)
            {
                if (!line.Formula.IsInput && FormulaValue.Of(line.Formula.Formula, values) is { } value)
                {
                    Assert.True(Math.Abs(value - line.Value) <= 1e-9 * Math.Abs(line.Value), line + ", worked out: " + value);
                    worked++;
                }

                values[line.Formula.Symbol] = line.Value;
            }
        }

        Assert.True(worked > 60, worked + " steps were worked out");
    }

    [Fact]
    public void EveryWord_OfAStep_HasSpanish()
    {
        CalculationStep[] steps =
        [
            .. typeof(CalculationStep).Assembly.GetTypes().SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public
                | BindingFlags.NonPublic)).Where(f => f.FieldType == typeof(CalculationStep) && !f.DeclaringType!.ContainsGenericParameters)
                .Select(f => (CalculationStep)f.GetValue(null)!),
        ];
        string[] open =
        [
            .. steps.Where(s => MathText.Symbols(s.Formula) is null && s.IsInput).Select(s => s.Formula).Concat(steps.Select(s => s.Source))
                .Distinct().Where(w => Texts.Spanish.Name(w) == w && !IsCitation(w)),
        ];
        Assert.True(open.Length == 0, string.Join("\n", open));
    }

    private static bool IsCitation(string words) => words is "Wahl" or "Banno and Ogawa 1979" or ""
        || words.StartsWith("EN ", StringComparison.Ordinal) || words.StartsWith("ISO ", StringComparison.Ordinal);

    [Fact]
    public void EveryPublicResult_HasASheetOrAReasonWhyNot()
    {
        string[] open =
        [
            .. typeof(CalculationStep).Assembly.GetExportedTypes()
                .Where(t => t is { IsClass: true, IsAbstract: false } && t.GetConstructors().Length == 0 && t.GetProperties().Any(IsNumber))
                .Select(t => t.Name).Where(n => !Results.ContainsKey(n) && !ExcusedResults.All.ContainsKey(n))
                .Order(StringComparer.Ordinal),
        ];
        Assert.True(open.Length == 0, string.Join("\n", open));
    }

    private static bool IsNumber(PropertyInfo property)
    {
        Type type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return typeof(QuantityBand).IsAssignableFrom(type) || typeof(IQuantity).IsAssignableFrom(type);
    }

    [Fact]
    public void EveryResult_LastStepOfItsHeadline_IsItsHeadline() => Assert.All(Results, row =>
    {
        (IReadOnlyList<CalculationLine> lines, string code, double headline) = row.Value();
        Assert.Equal(headline, lines.Last(l => l.Formula.Code == code).Value, Math.Abs(headline) * 1e-9);
    });

    /// <summary>The sheet of each result, the code of the step that is its headline, and the headline.</summary>
    private static readonly Dictionary<string, Func<(IReadOnlyList<CalculationLine> Lines, string Code, double Headline)>> Results = new()
    {
        ["BreakTorque"] = () =>
        {
            BreakTorque bolt = DeviceOf<ShearBoltDevice>("thornbeck-bolt-right").BreakTorque;
            return (bolt.Sheet(), "breakTorque", bolt.IfHubFree.High!.Value.NewtonMeters);
        },
        ["SlipTorque"] = () =>
        {
            SlipTorque slip = DeviceOf<SlipClutchDevice>("wickerby-clutch-too-hot").SlipTorque;
            return (slip.Sheet(), "breakawayTorque", slip.Breakaway.High!.Value.NewtonMeters);
        },
        ["ClutchSetting"] = () =>
        {
            ClutchSetting setting = ClutchSetting.For(
                Clutches.Build.NineSprings(), Torque.FromNewtonMeters(600), Clutches.Build.Clean(RunInState.RunIn));
            return (setting.Sheet(), "lengthNeeded", setting.SpringLength!.Value.Meters);
        },
        ["PartCheck"] = () =>
        {
            PartCheck part = DemoCases.Verdict("thornbeck-bolt-right").WeakestPart!;
            return (part.Sheet(), "guardMargin", part.Margin!.Value);
        },
        ["DeviceCheck"] = () =>
        {
            DeviceCheck device = DemoCases.Verdict("thornbeck-bolt-right").Devices[0];
            return (device.Sheet(), "workMargin", device.Margin!.Value);
        },
        ["StrikeEstimate"] = () =>
        {
            StrikeEstimate strike = StrikeEstimate.Of(
                StrikePlace.Blade, DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(50), Nm(300)).WithClutchCapacity(Nm(900))
                    .WithEngineInertia(KgM2(4.95)).WithLineInertia(KgM2(0.05)).WithStiffness(NmPerRad(2000))).WithDeadStop();
            return (strike.Sheet(), strike.Sheet()[^1].Formula.Code, strike.Peak.High!.Value.NewtonMeters);
        },
        ["EngagementTorque"] = () =>
        {
            EngagementTorque engaged = EngagementTorque.Of(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(1100)), Rated)
                .WithRotor(KgM2(2)).WithLoad(Nm(0));
            return (engaged.Sheet(), "engagementPeak", engaged.Peak.High!.Value.NewtonMeters);
        },
        ["PowerNeed"] = () =>
        {
            PowerNeed need = PowerNeed.Of(ImplementPower.Of("mower", "disk"), Length.FromMeters(2.8));
            return (need.Sheet(), "powerNeedHigh", (double)need.Power.High!.Value.Watts);
        },
        ["WorkPeak"] = () =>
        {
            WorkPeak work = WorkPeak.FromPower(
                PowerBand.Exactly(Power.FromKilowatts(22), Given), RotationalSpeed.FromRevolutionsPerMinute(1000),
                RatioBand.Between(1.3, 1.7, 2.2, Given));
            return (work.Sheet(), "workPeak", work.Torque.High!.Value.NewtonMeters);
        },
        ["StubStrength"] = () =>
        {
            StubStrength stub = StubStrength.Of(PtoTypes.Of(1));
            return (stub.Sheet(), "firstYieldTorque", stub.Torque.High!.Value.NewtonMeters);
        },
        ["TorsionCapacity"] = () =>
        {
            TorsionCapacity shaft = TorsionCapacity.Of(
                ShaftSection.Solid(Length.FromMillimeters(35)), StressBand.Exactly(Pressure.FromMegapascals(310), Given));
            return (shaft.Sheet(), "fullPlasticTorque", shaft.Torque.High!.Value.NewtonMeters);
        },
        ["SlipEvent"] = () =>
        {
            SlipEvent slip = Slip();
            return (slip.Sheet(), "slipEnergy", slip.Energy!.Value.Joules);
        },
        ["SlipHeat"] = () =>
        {
            SlipHeat heat = SlipHeat.Of(
                Slip(), HeatPath.Of(Clutches.Build.NineSprings().WithFacing(Facings.MouldedLining), ThermalMaterials.GreyCastIron,
                    Length.FromMillimeters(5)), Facings.MouldedLining, Temperature.FromDegreesCelsius(20));
            return (heat.Sheet(), "faceRise", heat.PeakFaceTemperature!.Value.DegreesCelsius - 20);
        },
    };

    private static SlipEvent Slip() => SlipEvent.Blocked(
        Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(2));

    private static T DeviceOf<T>(string demo)
        where T : ProtectiveDevice => DemoCases.Verdict(demo).Question.Chain.Devices.OfType<T>().First();
}
