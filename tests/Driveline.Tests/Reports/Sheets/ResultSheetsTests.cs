using System.Reflection;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Reports;

/// <summary>Every public result has a sheet or a reason why not, and each step of a sheet follows from the numbers before it.</summary>
public class ResultSheetsTests
{
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
