using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>Which device guards which part, in chains small enough to see.</summary>
public class GuardReachTests
{
    private static readonly RatioBand Half = RatioBand.Exactly(0.5, Stated);

    private static Part Wheel => Part.Flywheel("flywheel", MassMomentOfInertia.FromKilogramSquareMeters(9));

    [Fact]
    public void BehindFlywheel_ABoltBetween_AloneGuardsThePart()
    {
        // The clutch of 700 would guard plungers of 1400; past the flywheel only the bolt counts, and 2700 is above 1600.
        PartCheck plunger = Only(Clutch(600, 650, 700), Wheel, Bolt(2090, 2700, 3400), Limited("plunger", 1430, 1600, 1790));
        Assert.Equal("shear bolt", plunger.GuardedBy!.Name);
        Assert.Equal(Answer.No, plunger.Guards);
        Assert.Equal(1430.0 / 3400, plunger.Margin!.Value, 1e-12);
        Assert.Null(plunger.InertiaBetween);
        Assert.Equal(GuardSide.DriveSide, plunger.Side);
    }

    [Fact]
    public void BehindFlywheel_ABoltBetweenWeakEnough_IsAYes()
    {
        PartCheck plunger = Only(Clutch(600, 650, 700), Wheel, Bolt(800, 1000, 1300), Limited("plunger", 1430, 1600, 1790));
        Assert.Equal(Answer.Yes, plunger.Guards);
        Assert.Equal(1.1, plunger.Margin!.Value, 1e-12);   // 1430 / 1300
    }

    [Theory]
    [InlineData(1430, Answer.Maybe)]   // the clutch would act below it, but the flywheel does not ask the clutch
    [InlineData(500, Answer.No)]       // not even the tractor is held back in time: 650 above 500
    public void BehindFlywheel_NothingBetween_NothingGuards(double damagedNm, Answer guards)
    {
        PartCheck plunger = Only(Clutch(600, 650, 700), Wheel, Limited("plunger", damagedNm, damagedNm, damagedNm));
        Assert.Null(plunger.GuardedBy);
        Assert.Equal(GuardSide.NotGuarded, plunger.Side);
        Assert.Null(plunger.ActsAt);
        Assert.Null(plunger.Margin);
        Assert.Equal("flywheel", plunger.InertiaBetween!.Name);
        Assert.Equal(guards, plunger.Guards);
    }

    [Fact]
    public void BeforeFlywheel_ABoltBehindIt_DoesNotGuard()
    {
        PartCheck tube = First(Limited("tube", 2000, 2100, 2200), Wheel, Bolt(800, 900, 1000));
        Assert.Null(tube.GuardedBy);
        Assert.Equal("flywheel", tube.InertiaBetween!.Name);
        Assert.NotEqual(Answer.Yes, tube.Guards);
    }

    [Fact]
    public void BeforeFlywheel_AClutchBetween_GuardsFromTheSideOfTheWork()
    {
        PartCheck tube = First(Limited("tube", 2000, 2100, 2200), Clutch(600, 650, 700), Wheel, Bolt(400, 450, 500));
        Assert.Equal("clutch", tube.GuardedBy!.Name);
        Assert.Equal(GuardSide.WorkSide, tube.Side);
        Assert.Equal(Answer.Yes, tube.Guards);
        Assert.Equal(2000.0 / 700, tube.Margin!.Value, 1e-12);
    }

    [Fact]
    public void BesideAStore_DeviceAheadOfTheJunction_DoesNotGuard()
    {
        PartCheck auger = Only(Clutch(600, 650, 700), Branch.Of("side", Half, Wheel), Limited("auger", 2000, 2100, 2200));
        Assert.Null(auger.GuardedBy);
        Assert.Equal("flywheel", auger.InertiaBetween!.Name);
        Assert.Equal(Answer.Maybe, auger.Guards);
    }

    [Fact]
    public void BesideAStore_ADevicePartsFromTheJunction_TheOneAheadGuards()
    {
        PartCheck auger = Only(
            Clutch(600, 650, 700), Branch.Of("side", Half, Bolt(100, 110, 120), Wheel), Limited("auger", 2000, 2100, 2200));
        Assert.Equal("clutch", auger.GuardedBy!.Name);
        Assert.Equal(Answer.Yes, auger.Guards);
    }

    [Fact]
    public void BeforeAJunction_DevicesOfBothBranches_Add()
    {
        // At the junction the branches hold 300 and 500 at most: 800 together, below 810 and above 790.
        Element[] behind = [Branch.Of("side", Half, Named("a", 100, 200, 300)), Named("b", 400, 450, 500)];
        PartCheck safe = First([Limited("tube", 810, 900, 1000), .. behind]);
        Assert.Equal(Answer.Yes, safe.Guards);
        Assert.Equal(810.0 / 800, safe.Margin!.Value, 1e-12);
        Assert.Equal(650, safe.ActsAt!.SiBand.Expected, 1e-9);
        Assert.Equal("a", safe.GuardedBy!.Name);
        Assert.Equal(Answer.Maybe, First([Limited("tube", 790, 900, 1000), .. behind]).Guards);
        Assert.Equal(Answer.No, First([Limited("tube", 500, 600, 1000), .. behind]).Guards);
    }

    [Fact]
    public void BeforeAJunction_OneBranchOpen_NothingGuards()
    {
        PartCheck tube = First(
            Limited("tube", 810, 900, 1000), Branch.Of("side", Half, Limited("auger", 50, 60, 70)), Named("b", 400, 450, 500));
        Assert.True(tube.IsOpen);
        Assert.Null(tube.GuardedBy);
        Assert.Equal(Answer.No, tube.Guards);
    }

    [Fact]
    public void BeforeAJunction_OneBranchUnknown_IsNotKnownAndWithoutMargin()
    {
        PartCheck tube = First(
            Limited("tube", 810, 900, 1000), Branch.Of("side", Half, StatedDevice.NotIdentified("x")), Named("b", 400, 450, 500));
        Assert.Equal(Answer.NotKnown, tube.Guards);
        Assert.Null(tube.Margin);
        Assert.Null(tube.ActsAt);
    }

    [Fact]
    public void TwoDevicesInLine_EachEndComesFromTheEarlier()
    {
        // Low, expected and high of the first to act: min(900, 600), min(1000, 1100), min(1200, 1800).
        PartCheck tube = Only(Named("a", 900, 1000, 1200), Named("b", 600, 1100, 1800), Limited("tube", 1300, 1400, 1500));
        Assert.Equal(new Band(600, 1000, 1200), tube.ActsAt!.SiBand);
        Assert.Equal("a", tube.GuardedBy!.Name);
        Assert.Equal(Answer.Yes, tube.Guards);
    }

    [Fact]
    public void TwoDevicesInLine_Tied_NameTheOneNearerTheTractor()
    {
        PartCheck tube = Only(Named("a", 900, 1000, 1200), Named("b", 900, 1000, 1200), Limited("tube", 1300, 1400, 1500));
        Assert.Equal("a", tube.GuardedBy!.Name);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TwoDevicesInLine_OneUnknown_TheKnownOneStillGuards(bool unknownFirst)
    {
        ProtectiveDevice known = Named("a", 900, 1000, 1200);
        ProtectiveDevice unknown = StatedDevice.NotIdentified("x");
        PartCheck tube = unknownFirst ? Only(unknown, known, Limited("tube", 1300, 1400, 1500))
            : Only(known, unknown, Limited("tube", 1300, 1400, 1500));
        Assert.Equal("a", tube.GuardedBy!.Name);
        Assert.Equal(Answer.Yes, tube.Guards);

        // The unknown one may act before 500 is reached: no No.
        PartCheck weak = unknownFirst ? Only(unknown, known, Limited("tube", 500, 500, 500))
            : Only(known, unknown, Limited("tube", 500, 500, 500));
        Assert.Equal(Answer.Maybe, weak.Guards);
    }

    [Fact]
    public void BehindAGearboxOfUnknownRatio_DeviceAhead_IsNotKnown()
    {
        PartCheck rotorShaft = Only(
            Named("a", 900, 1000, 1200), Part.Gearbox("box").WithEfficiency(0.9), Limited("blade shaft", 3000, 3100, 3200));
        Assert.Equal(Answer.NotKnown, rotorShaft.Guards);
        Assert.Null(rotorShaft.Margin);
    }

    [Fact]
    public void Verdict_BoltBehindFlywheelTooStrong_SaysNoAndNamesTheBolt()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(DrivelineChain.Of(
            Stub, Joint, Clutch(600, 650, 700), Wheel, Bolt(2090, 2700, 3400), Gearbox.WithDamageTorque(Nm(1430, 1600, 1790))))
                .WithMachine(MachineKind.SmallSquareBaler));
        Assert.Equal(Headline.DoesNotProtect, verdict.Headline);
        Finding said = Assert.Single(verdict.Findings, f => f.Code == ProtectionFindings.TripAboveLimit);
        Assert.Equal("shear bolt", said.Parameter("device")!.Text);
    }

    private static ProtectiveDevice Clutch(double low, double expected, double high) =>
        StatedDevice.Of("clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Nm(low, expected, high));

    private static ProtectiveDevice Named(string name, double low, double expected, double high) =>
        StatedDevice.Of(name, DeviceKind.ShearBolt, AfterTrip.TorqueGone, Nm(low, expected, high));

    private static Part Limited(string name, double low, double expected, double high) => Part.Shaft(name)
        .WithDamageTorque(Nm(low, expected, high));

    private static PartCheck First(params Element[] elements) => Checked(elements)[0];

    private static PartCheck Only(params Element[] elements) => Checked(elements)[^1];

    private static IReadOnlyList<PartCheck> Checked(Element[] elements) =>
        ProtectionCheck.Run(ProtectionQuestion.About(DrivelineChain.Of(elements))).Parts;
}
