using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Tests.Clutches;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Chains;

public class SlipClutchDeviceTests
{
    [Fact]
    public void WellSetClutch_MeasuredSinceStorage_IsProtected()
    {
        ProtectionVerdict verdict = Check(Measured(Trusted()));
        Assert.Equal(Headline.Protected, verdict.Headline);
        Assert.Equal(AfterTrip.TorqueHeld, verdict.Devices[0].Device.AfterTrip);
    }

    [Theory]
    [InlineData("calculated", Answer.Maybe, DeviceFindings.SlipTorqueNotMeasured)]
    [InlineData("test before storage", Answer.Maybe, ClutchFindings.TestBeforeStorage)]
    [InlineData("storage not known", Answer.Maybe, ClutchFindings.StorageNotKnown)]
    [InlineData("test too old", Answer.Maybe, ClutchFindings.TestTooOld)]
    [InlineData("undated", Answer.Maybe, DeviceFindings.SlipTestUndated)]
    [InlineData("not described", Answer.Maybe, DeviceFindings.ClutchNotDescribed)]
    [InlineData("surface not known", Answer.Maybe, ClutchFindings.SurfaceNotKnown)]
    [InlineData("measured oily", Answer.Maybe, DeviceFindings.SlipMeasuredNotDry)]
    [InlineData("solid", Answer.No, ClutchFindings.SpringsSolid)]
    [InlineData("may be solid", Answer.Maybe, ClutchFindings.SpringsMayBeSolid)]
    [InlineData("stuck", Answer.No, ClutchFindings.Stuck)]
    public void Guards_WithoutOneProof_IsNoYes(string lacking, Answer guards, string bar)
    {
        ProtectionVerdict verdict = Check(lacking switch
        {
            "calculated" => SlipClutchDevice.Of("clutch", SlipTorque.Of(Clutch(), Build.Trusted(RunInState.RunIn))),
            "test before storage" => Measured(Trusted().WithStorage(Build.Today)),
            "storage not known" => Measured(Build.Clean(RunInState.RunIn).WithSlipTest(Test(2))),
            "test too old" => Measured(Build.Clean(RunInState.RunIn).WithStorage(Build.Today.AddDays(-500)).WithSlipTest(Test(366))),
            "undated" => Measured(Trusted()).Undated(),
            "not described" => SlipClutchDevice.Of("clutch", SlipTorque.OfMeasured(Trusted())),
            "surface not known" => Measured(Trusted().WithSurface(SurfaceState.NotKnown)),
            "measured oily" => Measured(Trusted().WithSurface(SurfaceState.Oiled)),
            "solid" => SlipClutchDevice.Of(
                "clutch", SlipTorque.Of(Clutch().WithSpringLength(Mm(40, 40, 40)), Build.Trusted(RunInState.RunIn))),
            "may be solid" => SlipClutchDevice.Of("clutch", SlipTorque.Of(Clutch().WithSpringLength(Mm(39.9, 45, 46)), Trusted())),
            _ => SlipClutchDevice.Of(
                "clutch", SlipTorque.Of(Clutch(), Build.Clean(RunInState.RunIn).WithSlipTest(SlipTest.DidNotSlip(Build.Today)))),
        });
        Assert.Equal(guards, verdict.Guards);
        Assert.Contains(bar, verdict.Devices[0].Device.GuardBars.Select(b => b.Code));
    }

    [Theory]
    [InlineData(365, true)]
    [InlineData(366, false)]
    public void SlipTest_AgeLimit_HasABoundary(int days, bool isYes) => Assert.Equal(
        isYes, Check(
            Measured(Build.Clean(RunInState.RunIn).WithStorage(Build.Today.AddDays(-500)).WithSlipTest(Test(days)))).Guards == Answer.Yes);

    [Fact]
    public void SpringLengthNotKnown_WithoutAMeasurement_IsNotKnownAndNotNo()
    {
        DiscClutch loose = DiscClutch.Of(Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Build.Exact(0.35), Build.NinePack());
        ProtectionVerdict verdict = Check(SlipClutchDevice.Of("clutch", SlipTorque.Of(loose, Build.Trusted(RunInState.RunIn))));
        Assert.Equal(Answer.NotKnown, verdict.Guards);
        Assert.Equal(Answer.NotKnown, verdict.Quiet);
        Assert.Equal(Measurements.ClutchSprings, verdict.MeasureNext.First(m => m.Place == MeasurementPlace.Machine).Code);
    }

    [Fact]
    public void StuckClutch_WithoutAnyTorque_StillDoesNotProtect()
    {
        ProtectionVerdict verdict = Check(SlipClutchDevice.Of("clutch", SlipTorque.NotKnown(Build.Clean(RunInState.RunIn).Stuck())));
        Assert.Equal(Headline.DoesNotProtect, verdict.Headline);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.TripHasNoLimit);
    }

    [Fact]
    public void StuckClutch_BesideAGoodBolt_LeavesTheBoltToGuard()
    {
        SlipClutchDevice stuck = SlipClutchDevice.Of("clutch", SlipTorque.NotKnown(Build.Clean(RunInState.RunIn).Stuck()));
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Tube, stuck, Bolt(1200, 1500, 2000), Gearbox, Blades)));
        Assert.Equal(Answer.Yes, verdict.Guards);
        Assert.Equal("shear bolt", verdict.FirstDevice!.Name);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.MayActFirst && f.Parameter("other")!.Text == "clutch");
    }

    [Fact]
    public void BoltAndClutch_ApartInTorque_SayWhichActsFirst()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Tube, Measured(Trusted()), Bolt(2050, 2060, 2080), Gearbox, Blades)));
        Assert.Equal("clutch", verdict.FirstDevice!.Name);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.ActsFirst && f.Parameter("name")!.Text == "clutch");
    }

    [Theory]
    [InlineData(0.5, true, "57 rad/s × 0.9 kN·m for a moment into 8 mm of iron: far below 200 °C")]
    [InlineData(500, false, "a rotor of 500 kg·m² slips for most of a minute")]
    public void Engagement_AboveTheRunningLow_CapsQuietOnlyWhenItGetsTooHot(double inertia, bool isQuiet, string why)
    {
        SlipEvent slip = SlipEvent.StartUp(Torque.FromNewtonMeters(900), MassMomentOfInertia.FromKilogramSquareMeters(inertia),
            RotationalSpeed.FromRevolutionsPerMinute(540), Torque.FromNewtonMeters(300));
        HeatPath path = HeatPath.Of(
            Build.NineSprings().FaceArea, 2, ThermalMaterials.GreyCastIron, Length.FromMillimeters(8), ThermalMaterials.MouldedFacing);
        SlipHeat heat = SlipHeat.Of(slip, path, Facings.MouldedLining, Temperature.FromDegreesCelsius(20));
        ProtectionVerdict verdict = Check(Measured(Trusted()).WithEngagementHeat(heat), engagementNm: 2000);
        Assert.True(isQuiet == (verdict.Quiet == Answer.Yes), why);
        Assert.Equal(isQuiet, verdict.Findings.Any(f => f.Code == ProtectionFindings.EngagementSlipsClutch));
        Assert.Equal(!isQuiet, verdict.EngagementMayTrip);
    }

    [Fact]
    public void Engagement_HeatNotKnown_CapsQuiet() =>
        Assert.Equal(Answer.Maybe, Check(Measured(Trusted()), engagementNm: 2000).Quiet);

    [Fact]
    public void Slips_HeatNotKnownOrFrequencyNotKnown_CapQuiet()
    {
        SlipTorque torque = SlipTorque.Of(Clutch(), Trusted());
        Assert.Contains(DeviceFindings.SlipsPerHourNotKnown, SlipClutchDevice.Of("clutch", torque).QuietBars.Select(b => b.Code));
        Assert.Contains(
            DeviceFindings.SlipHeatNotKnown, SlipClutchDevice.Of("clutch", torque).WithSlipsInWork(3).QuietBars.Select(b => b.Code));
        Assert.Equal(Answer.Maybe, Check(SlipClutchDevice.Of("clutch", torque).WithSlipsInWork(3)).Quiet);
    }

    [Fact]
    public void CutOut_SeenToTripSinceStorage_Guards()
    {
        CutOutDevice device = CutOutDevice.Of("cam clutch", CutOutClutch.Of(CutOutKind.Cam, Nm(1200, 1400, 1600)));
        ClutchCondition proven = ClutchCondition.AsOf(Build.Today).WithStorage(Build.Today.AddDays(-30))
            .WithSlipTest(SlipTest.Slipped(Build.Today.AddDays(-3)));
        Assert.Equal(Answer.Maybe, Check(device).Guards);
        Assert.Equal(Answer.Yes, Check(device.With(proven)).Guards);
        Assert.Equal(AfterTrip.TorqueFallsUntilSlow, device.AfterTrip);
        Assert.Equal(AfterTrip.TorquePulses, CutOutDevice.Of("r", CutOutClutch.Of(CutOutKind.Ratchet)).AfterTrip);
        Assert.Equal(Answer.NotKnown, Check(CutOutDevice.Of("r", CutOutClutch.Of(CutOutKind.Ratchet))).Guards);
    }

    [Theory]
    [InlineData(900, FittedComparison.Same)]
    [InlineData(700, FittedComparison.Stronger)]
    [InlineData(1200, FittedComparison.Weaker)]
    public void Fitted_AgainstSpecifiedSlipTorque_IsCompared(double specifiedNm, FittedComparison answer) =>
        Assert.Equal(answer, ProtectionCheck.Run(
        With(Measured(Trusted()).WithGoodOrder(Nm(900)))
            .WithSpecified(StatedDevice.Of("specified clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Nm(specifiedNm))))
        .FittedAgainstSpecified.Answer);

    // 250/175 mm, 2 faces, moulded lining; the reading of 1300 N·m decides: at least 0.7 of 1170 N·m in work, at most 1.4 × 1430 N·m after
    // standing.
    private static DiscClutch Clutch() => Build.NineSprings().WithFacing(Facings.MouldedLining);

    private static SlipTest Test(int daysAgo) =>
        SlipTest.Lever(Build.Today.AddDays(-daysAgo), Force.FromNewtons(650), Length.FromMeters(2));

    private static ClutchCondition Trusted() => Build.Clean(RunInState.RunIn).WithStorage(Build.Today.AddDays(-40), 5)
        .WithSlipTest(Test(2));

    private static SlipClutchDevice Measured(ClutchCondition condition) =>
        SlipClutchDevice.Of("clutch", SlipTorque.Of(Clutch(), condition)).WithoutSlipsInWork();

    private static LengthBand Mm(double low, double expected, double high) =>
        LengthBand.Between(Length.FromMillimeters(low), Length.FromMillimeters(expected), Length.FromMillimeters(high), Build.Stated);

    private static ProtectionVerdict Check(ProtectiveDevice device, double engagementNm = 700) => ProtectionCheck.Run(
        With(device).WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(engagementNm))));
}
