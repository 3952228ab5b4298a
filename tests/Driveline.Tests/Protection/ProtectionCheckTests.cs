using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Wording;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

public class ProtectionCheckTests
{
    [Fact]
    public void Run_TripBetweenWorkAndWeakest_IsProtected()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(1200, 1500, 2000)));
        Assert.Equal(Headline.Protected, verdict.Headline);
        Assert.Equal("drive tube", verdict.WeakestPart!.Part.Name);
        Assert.Equal(1.2, verdict.WorkMargin!.Value, 12);       // 1200 / 1000
        Assert.Equal(1.05, verdict.GuardMargin!.Value, 12);     // 2100 / 2000
        Assert.DoesNotContain(verdict.Doubts, o => o.OnGuards || o.OnQuiet);
    }

    [Theory]
    [InlineData(1200, 1500, 2099.9, Answer.Yes, "trip high just below damage low 2100")]
    [InlineData(1200, 1500, 2100, Answer.Maybe, "trip high at damage low: not before it")]
    [InlineData(1200, 2300, 2500, Answer.Maybe, "expected trip at expected damage 2300: not above it")]
    [InlineData(1200, 2300.1, 2500, Answer.No, "expected trip just above expected damage 2300")]
    public void Guards_AtItsBoundaries_AnswersAsDefined(double low, double expected, double high, Answer answer, string why)
    {
        Assert.True(ProtectionCheck.Run(With(Bolt(low, expected, high))).Guards == answer, why);
    }

    [Theory]
    [InlineData(1100.1, 1500, 2000, Answer.Yes, "trip low just above the clutch capacity 1100 and work high 1000")]
    [InlineData(1100, 1500, 2000, Answer.Maybe, "engaging may just trip it")]
    [InlineData(1000, 1500, 2000, Answer.Maybe, "trip low at work high: not above it")]
    [InlineData(700, 800, 2000, Answer.Maybe, "expected trip at expected work: not below it")]
    [InlineData(700, 799.9, 2000, Answer.No, "expected trip just below expected work 800")]
    public void Quiet_AtItsBoundaries_AnswersAsDefined(double low, double expected, double high, Answer answer, string why)
    {
        Assert.True(ProtectionCheck.Run(With(Bolt(low, expected, high))).Quiet == answer, why);
    }

    [Fact]
    public void Run_TooStrong_DoesNotProtect() =>
        Assert.Equal(Headline.DoesNotProtect, ProtectionCheck.Run(With(Bolt(2000, 2800, 3500))).Headline);

    [Fact]
    public void Run_TooSoft_TripsInWork() =>
        Assert.Equal(Headline.TripsInWork, ProtectionCheck.Run(With(Bolt(500, 650, 900))).Headline);

    [Fact]
    public void Run_WeakestBelowWork_NoSettingFits()
    {
        Part weak = Part.Shaft("drive tube").WithDamageTorque(Nm(600, 700, 900));
        ProtectionVerdict verdict = ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Joint, weak, Bolt(300, 400, 500), Gearbox, Blades)));
        Assert.Equal(Headline.NoSettingFits, verdict.Headline);
    }

    [Fact]
    public void Run_EngagementAboveWeakest_IsNeverNoSettingFits()
    {
        ProtectionQuestion question = With(Bolt(1200, 1500, 2000))
            .WithEngagement(Engagement.Through(PtoClutchKind.Electric).WithPeak(Nm(2500)));
        ProtectionVerdict verdict = ProtectionCheck.Run(question);
        Assert.Equal(Headline.TripsInWork, verdict.Headline);   // 2500 is above the expected 1500
        Assert.Equal(Answer.No, verdict.Quiet);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.EngagementTrips);
    }

    [Fact]
    public void Run_FeatheredHandLever_TakesTheEngagementPeakAway()
    {
        ProtectionQuestion question = With(Bolt(1200, 1500, 2000)).WithEngagement(
            Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(1800)).WithManner(EngagementManner.Gentle));
        Assert.Equal(Headline.Protected, ProtectionCheck.Run(question).Headline);
        ProtectionQuestion electric = question.WithEngagement(
            Engagement.Through(PtoClutchKind.Electric).WithCapacity(Nm(1800)).WithManner(EngagementManner.Gentle));
        Assert.Equal(Headline.Doubtful, ProtectionCheck.Run(electric).Headline);
    }

    [Fact]
    public void Run_NoDeviceInACompleteList_DoesNotProtect()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Joint, Tube, Gearbox, Blades)));
        Assert.Equal(Headline.DoesNotProtect, verdict.Headline);
        Assert.Equal(Answer.NotKnown, verdict.Quiet);
        Assert.Null(verdict.GuardMargin is { } margin && margin > 0 ? (object)margin : null);
    }

    [Fact]
    public void Run_NotIdentifiedDevice_IsNotKnown_AndSaysToIdentifyItFirst()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(StatedDevice.NotIdentified("shear bolt")));
        Assert.Equal(Headline.NotKnown, verdict.Headline);
        Assert.Equal(Measurements.IdentifyDevice, verdict.MeasureNext[0].Code);
    }

    [Fact]
    public void Guards_ExpectedTripNotKnown_IsMaybeNotNo()
    {
        ProtectiveDevice stainless = StatedDevice.Of(
            "pin", DeviceKind.ShearBolt, AfterTrip.TorqueGone, TorqueBand.AtLeast(Torque.FromNewtonMeters(1200), Stated));
        Assert.Equal(Answer.Maybe, ProtectionCheck.Run(With(stainless)).Guards);
    }

    [Fact]
    public void Run_DeviceBehindGearbox_IsComparedAtEachPosition()
    {
        // Trip 1000 N·m behind a gearbox of ratio 0.5 (speed down) and η 0.8: before it, 1000 · 0.5 / 0.8 = 625 N·m.
        Part gearbox = Part.Gearbox("gearbox", 0.5).WithEfficiency(0.8).WithDamageTorque(Nm(650));
        DrivelineChain chain = DrivelineChain.Of(
            Stub, Joint, Tube, gearbox, Bolt(1000, 1000, 1000), Part.Shaft("auger").WithDamageTorque(Nm(1200)));
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(chain).WithMachine(MachineKind.PostHoleAuger).WithWork(WorkPeak.Stated(Nm(200, 300, 400)))
            .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithPeak(Nm(300))));
        Assert.Equal(625, verdict.Trip!.Low.NewtonMeters, 9);
        Assert.Equal(1.04, verdict.GuardMargin!.Value, 12);              // gearbox 650 / 625
        Assert.Equal(1.5625, verdict.WorkMargin!.Value, 12);             // 1000 / (400 · 0.8 / 0.5 = 640)
        Assert.Equal(Headline.Protected, verdict.Headline);
        Assert.Equal(GuardSide.WorkSide, verdict.Parts[2].Side);
        Assert.Equal(GuardSide.DriveSide, verdict.Parts[4].Side);
    }

    [Fact]
    public void Run_UnstatedEfficiencyOnTheUnsafeSide_BarsYes()
    {
        DrivelineChain behind = DrivelineChain.Of(
            Stub, Joint, Tube, Part.Gearbox("gearbox", 1).WithDamageTorque(Nm(2900)), Bolt(1200, 1400, 1600), Blades);
        Assert.Equal(Answer.Maybe, ProtectionCheck.Run(With(behind)).Guards);
        DrivelineChain ahead = DrivelineChain.Of(
            Stub, Joint, Tube, Bolt(1200, 1400, 1600), Part.Gearbox("gearbox", 1).WithDamageTorque(Nm(2900)), Blades);
        Assert.Equal(Answer.Yes, ProtectionCheck.Run(With(ahead)).Guards);
    }

    [Fact]
    public void Run_PartBehindFlywheel_GetsNoYes()
    {
        Part flywheel = Part.Flywheel("flywheel", MassMomentOfInertia.FromKilogramSquareMeters(20));
        Part crank = Part.Shaft("crank").WithDamageTorque(Nm(5000));
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Tube, Bolt(1200, 1500, 2000), flywheel, Gearbox, crank)));
        PartCheck check = verdict.Parts.Single(p => p.Part.Name == "crank");
        Assert.Equal(Answer.Maybe, check.Guards);
        Assert.Equal("flywheel", check.InertiaBetween!.Name);
        Assert.Equal(Answer.Yes, verdict.Parts.Single(p => p.Part.Name == "drive tube").Guards);
    }

    [Fact]
    public void Run_BranchWithItsOwnBolt_DoesNotGuardTheTrunk()
    {
        RatioBand share = RatioBand.Exactly(0.25, Stated);
        DrivelineChain chain = DrivelineChain.Of(
            Stub, Tube, Part.Gearbox("gearbox", 1).WithEfficiency(1).WithDamageTorque(Nm(2900)),
            Branch.Of("feed auger", share, Bolt(300, 350, 400), Part.Shaft("auger shaft").WithDamageTorque(Nm(500))),
            Blades);
        ProtectionVerdict verdict = ProtectionCheck.Run(With(chain));
        Assert.Equal(Headline.DoesNotProtect, verdict.Headline);
        Assert.Equal(GuardSide.NotGuarded, verdict.Parts.Single(p => p.Part.Name == "drive tube").Side);
        Assert.Equal(Answer.Yes, verdict.Parts.Single(p => p.Part.Name == "auger shaft").Guards);
        Assert.Equal(1200, verdict.Trip!.Low.NewtonMeters, 9);    // 300 / 0.25: the PTO torque of normal work at which it acts
        Assert.Equal(1.2, verdict.WorkMargin!.Value, 12);         // 300 / (1000 · 0.25)
    }

    [Fact]
    public void Run_BoltInEveryBranch_GuardsTheTrunkWithTheSum()
    {
        DrivelineChain chain = DrivelineChain.Of(
            Stub, Tube, Part.Gearbox("gearbox", 1).WithEfficiency(1).WithDamageTorque(Nm(2900)),
            Branch.Of("left", RatioBand.Exactly(0.5, Stated), Bolt(600, 700, 800)),
            Branch.Of("right", RatioBand.Exactly(0.5, Stated), Bolt(600, 700, 900), Blades));
        PartCheck tube = ProtectionCheck.Run(With(chain)).Parts.Single(p => p.Part.Name == "drive tube");
        Assert.Equal(1700, tube.ActsAt!.High!.Value.NewtonMeters, 9);   // 800 + 900
    }

    [Fact]
    public void Doubtful_WidestBand_IsMeasuredFirst()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(1200, 1700, 2600)));
        Assert.Equal(Headline.Doubtful, verdict.Headline);
        Assert.Equal(Measurements.BoltHardness,
            verdict.MeasureNext.First(m => m.Place is MeasurementPlace.Workshop or MeasurementPlace.Maker).Code);
        // ln(2600/1200) = 0.77 against ln(2600/2100) = 0.21
    }

    [Theory]
    [InlineData(1500, FittedComparison.Same)]
    [InlineData(1575, FittedComparison.Same)]
    [InlineData(1576, FittedComparison.Stronger)]
    [InlineData(1420, FittedComparison.Weaker)]
    public void FittedAgainstSpecified_ExpectedRatio_Decides(double fitted, FittedComparison answer)
    {
        ProtectionQuestion question = With(Bolt(1200, fitted, 2000)).WithSpecified(Bolt(1200, 1500, 2000));
        FittedAgainstSpecified comparison = ProtectionCheck.Run(question).FittedAgainstSpecified;
        Assert.Equal(answer, comparison.Answer);
        Assert.Equal(0.6, comparison.Ratio!.Low, 12);              // 1200 / 2000
    }

    [Fact]
    public void Cautions_OfAnyVerdict_AreAllThereAndHaveWords()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(Bolt(1200, 1500, 2000)));
        Assert.Equal(6, verdict.Cautions.Count);   // five for every machine, and halves to support where a bolt is taken out
        Assert.All(verdict.Cautions, c => Assert.NotEqual(c.Code, Texts.English.Of(c.Code)));
    }

    [Fact]
    public void Ladder_Torques_AreInOrder()
    {
        IReadOnlyList<LadderRung> ladder = ProtectionCheck.Run(With(Bolt(1200, 1500, 2000))).Ladder;
        Assert.Equal(
            [LadderRungKind.Work, LadderRungKind.Engagement, LadderRungKind.Trip, LadderRungKind.Damage, LadderRungKind.Damage,
                LadderRungKind.Damage, LadderRungKind.Damage],
            ladder.Select(r => r.Kind));
    }

    [Fact]
    public void BranchShares_AboveOne_AreRefused()
    {
        RatioBand most = RatioBand.Exactly(0.7, Stated);
        var error = Assert.Throws<ArgumentException>(() => DrivelineChain.Of(
            Branch.Of("a", most, Bolt(1, 1, 1)), Branch.Of("b", most, Bolt(1, 1, 1))));
        Assert.Contains("add up to 1.4", error.Message, StringComparison.Ordinal);
    }
}
