using Driveline.Clutches;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

public class EngagementPublished
{
    // WE27: 1.5 kg·m² to 540 min⁻¹ through 600 N·m, no load: 0.1414 s and 2398 J.
    [Fact]
    public void Engagement_ThroughASlipClutch_IsAsWorked()
    {
        EngagementTorque start = EngagementTorque.Of(Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(600)), Rated)
            .WithRotor(KgM2(1.5)).WithLoad(Nm(0));
        Close.Relative(0.1414, start.SynchronisingTime!.Expected!.Value.Seconds, 1e-3, "WE27");
        Close.Relative(0.1414, start.SynchronisingTime.High!.Value.Seconds, 1e-3, "WE27");
        Close.Relative(2398, start.SlipHeat!.Expected!.Value.Joules, 1e-3, "WE27: ½ I ω²");
        Close.Relative(2398, start.SlipHeat.Low.Joules, 1e-3, "WE27: ½ I ω²");
    }

    // T09: 0.8 and 0.2 kg·m², 56.548668 rad/s apart, 300 N·m: 0.030159289 s, 255.82015 J.
    [Fact]
    public void Slip_TwoInertias_IsAsPublished()
    {
        NoSteps none = default;
        double seconds = SlipKernel.TimeS(56.548668, 300, 0.8, 0.2, 0, 0, ref none);
        Close.Relative(0.030159289, seconds, 1e-7, "T09");
        Close.Relative(255.82015, SlipKernel.SharedJ(0.8, 0.2, 56.548668, 0, 56.548668 * seconds / 2, ref none), 1e-7, "T09");
        Close.Relative(
            0.5 * 0.2 * 56.548668 * 56.548668,
            SlipKernel.SharedJ(double.PositiveInfinity, 0.2, 56.548668, 0, 1, ref none),
            1e-12,
            "T09: one side at constant speed loses ½ I Δω²");
    }

    // WE26: 1000 N·m, 540 min⁻¹, output locked for 3 s: 169.6 kJ, mean 56.5 kW.
    [Fact]
    public void Slip_OutputLocked_IsAsWorked()
    {
        NoSteps none = default;
        Close.Relative(169.6e3, SlipKernel.EnergyJ(1000, 540 * Math.PI / 30 * 3, ref none), 1e-3, "WE26");
        EngagementTorque stuck = EngagementTorque.Of(Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(1000)), Rated);
        Close.Relative(56.5, (double)stuck.SlipPower.Expected!.Value.Kilowatts, 1e-3, "WE26");
    }

    [Theory]
    [InlineData(1, 1.6366198)]
    [InlineData(2, 1)]
    [InlineData(3, 1.2122066)]
    public void RampFactor_WholeHalfPeriods_IsAsPublished(int times, double factor)
    {
        NoSteps none = default;
        Close.Absolute(factor, EngagementKernel.RampFactor(times * Math.PI / 2, ref none), 5e-8, "T07: ω t_r = π, 2 π, 3 π");
    }

    [Fact]
    public void RampFactor_AStep_IsTwo()
    {
        NoSteps none = default;
        Close.Absolute(2, EngagementKernel.RampFactor(0, ref none), 1e-12, "T05: step torque, factor 2");
        Close.Absolute(2, EngagementKernel.RampFactor(1e-5, ref none), 1e-9, "T05: the limit of a short ramp");
    }

    // T06: step of 500 N·m on 0.8 against 0.2 kg·m²: mean 100, peak 200 N·m: twice the share that runs up the far side.
    [Fact]
    public void PeakNm_StepOnTwoInertias_IsAsPublished()
    {
        NoSteps none = default;
        Close.Absolute(200, EngagementKernel.PeakNm(500 * 0.2 / (0.8 + 0.2), 2, 0, ref none), 1e-9, "T06");
    }

    [Fact]
    public void StartUpWithoutSlip_SpreaderClutch_IsAsImplied()
    {
        TorqueBand implied = StartUpWithoutSlip.Of(Nm(180, 200, 220));
        Close.Relative(1800, implied.Low.NewtonMeters, 1e-12, "WE34: 180 to 220 N·m, one tenth with slip");
        Close.Relative(2200, implied.High!.Value.NewtonMeters, 1e-12, "WE34");
        Assert.Equal(BandEnd.Interval95, implied.Basis.HighEnd);
    }

    // T14: a jammed grinding wheel, 8.143e-4 kg·m² at 2400 min⁻¹ on a shaft 20 mm × 250 mm, G 79 GPa: 505.3 N·m.
    [Fact]
    public void RigidPeak_JammedWheel_IsAsPublished()
    {
        LineStiffness shaft = LineStiffness.Of(
            ShaftSection.Solid(Length.FromMillimeters(20)),
            Length.FromMillimeters(250),
            StressBand.Exactly(Pressure.FromGigapascals(79), Given));
        EngagementTorque start = EngagementTorque.Of(Engagement.NotKnown, RotationalSpeed.FromRevolutionsPerMinute(2400))
            .WithRotor(KgM2(8.143e-4)).WithStiffness(shaft.Stiffness);
        Close.Relative(505.3, start.RigidPeak!.Expected!.Value.NewtonMeters, 2e-4, "T14");
        Assert.False(start.Peak.IsBounded);
    }
}
