using Driveline.Clutches;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SlipHeatTests
{
    private static readonly Temperature Mild = Temperature.FromDegreesCelsius(20);

    [Fact]
    public void Blocked_TwoSeconds_GivesDocumentedHeat()
    {
        // hand: 600 N·m × 540 × π/30 = 33.93 kW; × 2 s = 67.86 kJ; angle 56.549 × 2 = 113.1 rad
        SlipEvent slip = SlipEvent.Blocked(
            Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(2));
        Assert.Equal(33.93, (double)slip.PeakPower.Kilowatts, 0.005);
        Assert.Equal(67.86, slip.Energy!.Value.Kilojoules, 0.005);
        Assert.Equal(113.1, slip.SlipAngle!.Value.Radians, 0.05);
        Assert.False(slip.IsFalling);
    }

    [Fact]
    public void Blocked_NobodyDisengages_NeverEnds()
    {
        SlipHeat heat = Heat(SlipEvent.Blocked(Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540)));
        Assert.Null(heat.PeakFaceTemperature);
        Assert.Null(heat.LumpedRise);
        Assert.NotNull(heat.TimeToMaximum);
        Assert.Contains(heat.Findings, f => f.Code == ClutchFindings.SlipNeverEnds);
        Assert.Contains(heat.Findings, f => f.Code == ClutchFindings.AboveMaximumTemperature);
    }

    [Theory]
    [InlineData(99.9, true)]
    [InlineData(100, false)]
    public void StartUp_LoadAtTorque_NeverEnds(double loadNm, bool ends)
    {
        SlipEvent slip = SlipEvent.StartUp(
            Torque.FromNewtonMeters(100), MassMomentOfInertia.FromKilogramSquareMeters(2), RotationalSpeed.FromRevolutionsPerMinute(540),
                Torque.FromNewtonMeters(loadNm));
        Assert.Equal(ends, slip.Ends);
        Assert.Equal(ends, slip.Energy is not null);
    }

    [Fact]
    public void TimeTo_SemiInfiniteRange_MatchesHand()
    {
        // hand: area π(0.125² - 0.0875²) = 0.025035 m²; P 30 kW on 2 faces: 599.2 kW/m²; share into iron 12602/(12602+1673.3) = 0.8828:
        // q1 = 528.9 kW/m². 200 - 20 = 180 K: t = π · 12602² · (180 / (2 · 528.9e3))² = 14.45 s in a thick plate.
        double nm = 30e3 / (540 * Math.PI / 30);
        SlipEvent slip = SlipEvent.Blocked(Torque.FromNewtonMeters(nm), RotationalSpeed.FromRevolutionsPerMinute(540));
        HeatPath thick = HeatPath.Of(
            Build.NineSprings().WithFacing(Facings.MouldedLining), ThermalMaterials.HighCarbonCastIron, Length.FromMillimeters(200));
        SlipHeat heat = SlipHeat.Of(slip, thick, Facings.MouldedLining, Mild);
        Assert.Equal(14.45, heat.TimeToContinuous!.Value.Seconds, 0.02);
        Assert.True(heat.TimeToFirstSmoke > heat.TimeToContinuous && heat.TimeToFirstSmoke < heat.TimeToMaximum);
        Assert.Equal(599.2, heat.FaceFlux.KilowattsPerSquareMeter, 0.1);
    }

    [Fact]
    public void StartUp_SemiInfinite_PeaksAtHalfTime()
    {
        // derived: maximum at ts/2, 0.9428 · q0 · √(ts / (π·k·ρ·c))
        SlipEvent slip = SlipEvent.StartUp(
            Torque.FromNewtonMeters(500), MassMomentOfInertia.FromKilogramSquareMeters(8), RotationalSpeed.FromRevolutionsPerMinute(540),
                Torque.Zero);
        HeatPath thick = HeatPath.Of(Area.FromSquareMeters(0.025), 2, ThermalMaterials.HighCarbonCastIron, Length.FromMillimeters(100),
            ThermalMaterials.MouldedFacing);
        SlipHeat heat = SlipHeat.Of(slip, thick, Facings.MouldedLining, Mild);
        double ts = slip.Duration!.Value.Seconds;
        double q0 = thick.PlateShare * (double)slip.PeakPower.Watts / 0.05;
        double peak = 0.9428 * q0 * Math.Sqrt(ts / Math.PI) / 12602;
        Assert.Equal(1, (heat.PeakFaceTemperature!.Value.DegreesCelsius - 20) / peak, 1e-4);
        Assert.Equal(heat.PeakFaceTemperature.Value.Kelvins, heat.FaceTemperature(Duration.FromSeconds(ts / 2)).Kelvins, 1e-3);
        Assert.True(heat.EndFaceTemperature < heat.PeakFaceTemperature);
    }

    [Theory]
    [InlineData(1.99, null)]
    [InlineData(2.0, ClutchFindings.HotToTouch)]
    [InlineData(10.0, ClutchFindings.HotToTouch)]
    [InlineData(10.01, ClutchFindings.SlipTooLong)]
    public void Of_DurationAtPrintedBounds_IsJudged(double seconds, string? code)
    {
        SlipHeat heat = Heat(
            SlipEvent.Blocked(Torque.FromNewtonMeters(5), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(seconds)));
        Assert.Equal(code, heat.Findings.SingleOrDefault(f => f.Code is ClutchFindings.HotToTouch or ClutchFindings.SlipTooLong)?.Code);
    }

    [Fact]
    public void Of_FacingWithoutLimits_SaysSo()
    {
        SlipEvent slip = SlipEvent.Blocked(
            Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(1));
        SlipHeat heat = SlipHeat.Of(slip, Path(), Build.Exact(0.35), Mild);
        Assert.Null(heat.TimeToMaximum);
        Assert.Contains(heat.Findings, f => f.Code == ClutchFindings.TemperatureLimitNotKnown);
    }

    [Fact]
    public void Of_PowerAboveRating_IsFound()
    {
        // hand: moulded lining rated to 1.2 W/mm²; 600 N·m at 540 rpm on 2 × 0.025035 m² is 0.68 W/mm², at 1000 rpm with 1200 N·m 2.5 W/mm²
        Assert.DoesNotContain(
            Heat(SlipEvent.Blocked(Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540),
            Duration.FromSeconds(1))).Findings, f => f.Code == ClutchFindings.SlipPowerHigh);
        Assert.Contains(
            Heat(SlipEvent.Blocked(Torque.FromNewtonMeters(1200), RotationalSpeed.FromRevolutionsPerMinute(1000),
            Duration.FromSeconds(1))).Findings, f => f.Code == ClutchFindings.SlipPowerHigh);
    }

    [Fact]
    public void TimeTo_StartAboveLimit_IsZero()
    {
        SlipEvent slip = SlipEvent.Blocked(
            Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(1));
        Assert.Equal(
            0, SlipHeat.Of(slip, Path(), Facings.MouldedLining, Temperature.FromDegreesCelsius(250)).TimeToContinuous!.Value.Seconds);
    }

    [Fact]
    public void Of_NoTorque_HeatsNothing()
    {
        SlipHeat heat = Heat(SlipEvent.Blocked(Torque.Zero, RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(1)));
        Assert.Equal(20, heat.PeakFaceTemperature!.Value.DegreesCelsius, 1e-9);
        Assert.Null(heat.TimeToContinuous);
        Assert.Null(Heat(SlipEvent.Blocked(Torque.Zero, RotationalSpeed.FromRevolutionsPerMinute(540))).TimeToContinuous);
    }

    [Fact]
    public void CoolDown_OneTimeConstant_LeavesShare()
    {
        RepeatedSlips slips = Cooling();
        Duration t = slips.CoolDown(Temperature.FromDegreesCelsius(20 + 100), Temperature.FromDegreesCelsius(20 + (100 * Math.Exp(-1))));
        Assert.Equal(1, t.Seconds / slips.TimeConstant.Seconds, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => slips.CoolDown(Temperature.FromDegreesCelsius(120), Mild));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => slips.CoolDown(Temperature.FromDegreesCelsius(30), Temperature.FromDegreesCelsius(40)));
    }

    [Fact]
    public void HighestAfter_ManySlips_RisesToHighest()
    {
        RepeatedSlips slips = Cooling();
        Assert.Equal(20 + slips.RisePerSlip.Kelvins, slips.HighestAfter(1).DegreesCelsius, 1e-9);
        Assert.True(slips.HighestAfter(2) > slips.HighestAfter(1));
        Assert.Equal(slips.Highest.Kelvins, slips.HighestAfter(100000).Kelvins, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => slips.HighestAfter(0));
    }

    [Fact]
    public void RepeatedSlips_PathWithoutCooling_IsRefused()
    {
        SlipEvent slip = SlipEvent.Blocked(
            Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(1));
        Assert.Throws<ArgumentException>(() => RepeatedSlips.Of(slip, Path(), Mild, Duration.FromMinutes(5)));
        SlipEvent endless = SlipEvent.Blocked(Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540));
        Assert.Throws<ArgumentException>(
            () => RepeatedSlips.Of(
            endless, Path().WithCooling(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(20), Area.FromSquareMeters(0.1)), Mild,
            Duration.FromMinutes(5)));
    }

    [Fact]
    public void HeatPath_FacingWithoutThermal_IsRefused() =>
        Assert.Throws<ArgumentException>(() => HeatPath.Of(Build.NineSprings(), ThermalMaterials.GreyCastIron, Length.FromMillimeters(5)));

    [Fact]
    public void Sheet_EndingSlip_EndsWithTemperatures()
    {
        SlipHeat heat = Heat(
            SlipEvent.Blocked(Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(2)));
        Assert.Equal(heat.LumpedRise!.Value.Kelvins, heat.Sheet().Single(l => l.Formula.Code == "lumpedRise").Value, 1e-12);
        Assert.Equal(
            heat.PeakFaceTemperature!.Value.DegreesCelsius - 20, heat.Sheet().Single(l => l.Formula.Code == "faceRise").Value, 1e-9);
    }

    private static SlipHeat Heat(SlipEvent slip) => SlipHeat.Of(slip, Path(), Facings.MouldedLining, Mild);

    private static HeatPath Path() =>
        HeatPath.Of(Build.NineSprings().WithFacing(Facings.MouldedLining), ThermalMaterials.GreyCastIron, Length.FromMillimeters(8));

    private static RepeatedSlips Cooling() => RepeatedSlips.Of(
        SlipEvent.Blocked(Torque.FromNewtonMeters(600), RotationalSpeed.FromRevolutionsPerMinute(540), Duration.FromSeconds(1)),
        Path().WithCooling(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(25), Area.FromSquareMeters(0.1)),
        Mild,
        Duration.FromMinutes(5));
}
