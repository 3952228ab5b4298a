using Driveline.Chains;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.ShearBolts;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>What the tractor's clutch, engine and engagement say beside the two questions.</summary>
public class TractorSideTests
{
    [Theory]
    [InlineData(800, true)]     // slips before the weakest bolt, 1200
    [InlineData(1250, false)]
    public void PtoClutch_SlipsBeforeTheWeakestBolt_IsSaid(double capacityNm, bool isSaid)
    {
        ProtectionVerdict verdict = Check(
            Engagement.Through(PtoClutchKind.HandLever).WithManner(EngagementManner.Gentle).WithCapacity(Nm(capacityNm)));
        Assert.Equal(isSaid, verdict.Findings.Any(f => f.Code == ProtectionFindings.PtoClutchFirst));
        Assert.Equal(Headline.Protected, verdict.Headline);
        Assert.Equal(2100.0 / 1600, verdict.GuardMargin!.Value, 1e-12);   // the tube over the bolt, whatever the clutch passes
    }

    [Fact]
    public void PtoClutch_WeakerThanEveryPart_SoftensNoNo()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(Bolt(2500, 2800, 3200)).WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(500))));
        Assert.Equal(Answer.No, verdict.Guards);
    }

    [Theory]
    [InlineData(1100, true)]
    [InlineData(1300, false)]
    public void Engine_StallsBeforeTheWeakestBolt_IsSaid(double highestNm, bool isSaid) => Assert.Equal(
        isSaid,
        ProtectionCheck.Run(With(Bolt(1200, 1400, 1600)).WithEngineHighest(Nm(highestNm))).Findings.Any(
            f => f.Code == ProtectionFindings.EngineStallsFirst));

    [Theory]
    [InlineData(690, true)]     // the lowest peak is 700
    [InlineData(710, false)]
    public void Work_AboveAllTheClutchPasses_IsAContradiction(double capacityNm, bool isSaid) => Assert.Equal(
        isSaid, Check(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(capacityNm))).Findings.Any(
            f => f.Code == ProtectionFindings.WorkAboveClutch));

    [Theory]
    [InlineData(510, true)]
    [InlineData(490, false)]
    public void Mean_AboveTheEnginesHighest_IsAContradiction(double meanNm, bool isSaid) => Assert.Equal(
        isSaid,
        ProtectionCheck.Run(With(Bolt(1200, 1400, 1600)).WithSteadyMean(Nm(meanNm)).WithEngineHighest(Nm(500))).Findings.Any(
            f => f.Code == ProtectionFindings.MeanAboveEngine));

    [Theory]
    [InlineData(1500, Answer.No, true)]      // above the expected 1400
    [InlineData(1300, Answer.Maybe, false)]  // within the band
    [InlineData(1100, Answer.Yes, false)]
    public void EngagementPeak_AgainstTheExpectedTrip_Decides(double peakNm, Answer quiet, bool trips)
    {
        ProtectionVerdict verdict = Check(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(2000)).WithPeak(Nm(peakNm)));
        Assert.Equal(quiet, verdict.Quiet);
        Assert.Equal(trips, verdict.EngagementTrips);
        Assert.Equal(trips, verdict.Headline == Headline.TripsInWork);
        Assert.Equal(trips, verdict.Findings.Any(f => f.Code == ProtectionFindings.EngagementTrips));
        Assert.DoesNotContain(verdict.MeasureNext, m => m.Code == Measurements.PtoClutchCapacity);
    }

    [Fact]
    public void EngagementCapacity_AboveTheTrip_IsNoPeakAndIsNotAskedFor()
    {
        ProtectionVerdict verdict = Check(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(2000)));
        Assert.Equal(Answer.Maybe, verdict.Quiet);
        Assert.DoesNotContain(verdict.MeasureNext, m => m.Code == Measurements.PtoClutchCapacity);
        Assert.Contains(Check(Engagement.NotKnown).MeasureNext, m => m.Code == Measurements.PtoClutchCapacity);
    }

    [Theory]
    [InlineData(1190, Answer.Yes)]     // below the weakest bolt, 1200
    [InlineData(1210, Answer.Maybe)]
    [InlineData(5000, Answer.Maybe)]   // a bound is no peak: it never says that the bolt breaks
    public void EngagementBound_IsEnoughToStayQuiet_NeverToTrip(double atMostNm, Answer quiet)
    {
        ProtectionVerdict verdict = Check(Engagement.Through(PtoClutchKind.Electric).WithPeakAtMost(Nm(100, atMostNm, atMostNm)));
        Assert.Equal(quiet, verdict.Quiet);
        Assert.False(verdict.EngagementTrips);
    }

    [Fact]
    public void DefaultOfTheStub_BelowTheTrip_RaisesNoAlarmAndNoMargin()
    {
        Part stub = Part.Of(PartKind.PtoStub, "PTO stub").WithLimit(PartLimit.ImpliedByPtoType(Nm(1149, 1300, 1400)));
        ProtectionVerdict verdict = ProtectionCheck.Run(
            With(DrivelineChain.Of(stub, Joint, Tube, Bolt(1200, 1400, 1600), Gearbox, Blades)));
        Assert.DoesNotContain(verdict.Findings, f => f.Severity == Severity.Danger);
        Assert.Equal("drive tube", verdict.WeakestPart!.Part.Name);
        Assert.Equal(2100.0 / 1600, verdict.GuardMargin!.Value, 1e-12);
        Assert.Null(verdict.Parts[0].Margin);
        Assert.Equal(Answer.Maybe, verdict.Guards);
        Assert.Contains(verdict.Findings, f => f.Code == ProtectionFindings.PartLimitAssumed && f.IsBarring(Bars.Guards));
    }

    [Theory]
    [InlineData(700, Answer.Yes)]
    [InlineData(1000, Answer.Maybe)]
    public void Bolt_ThatYieldsAtEachPeak_IsAtMostMaybeQuiet(double peakNm, Answer quiet)
    {
        // 3/8 in, least shank 9.144 mm: 65.67 mm², two planes at 15.875 mm: 2085 mm³; shear yield 0.75 · 827 / √3 = 358 MPa, so 746 N·m.
        ShearBolt bolt = ShearBolt.Of(Driveline.Fasteners.ScrewThread.Parse("3/8-16 UNC"), Driveline.Fasteners.BoltGrade.Parse("SAE 5"))
            .With(PlaneThrough.Shank);
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(bolt, Length.FromInches(1.25)).WithHub(HubState.Free);
        ProtectionVerdict verdict = ProtectionCheck.Run(With(ShearBoltDevice.Of("shear bolt", joint))
            .WithWork(WorkPeak.Stated(Nm(500, 600, peakNm)))
            .WithEngagement(Engagement.Through(PtoClutchKind.HandLever).WithCapacity(Nm(900))));
        Assert.Equal(quiet, verdict.Quiet);
        Assert.Equal(
            quiet == Answer.Maybe, verdict.Findings.Any(
            f => f.Code == ShearBoltFindings.YieldsAtEachPeak && f.Bars == Bars.Quiet && f.Parameter("peaks")!.Value > 100));
    }

    [Fact]
    public void Limit_OnlyItsLowEndStated_IsEnoughForAYes()
    {
        Part tube = Part.Shaft("drive tube")
            .WithDamageTorque(Driveline.Quantities.TorqueBand.AtLeast(Torque.FromNewtonMeters(2100), Stated));
        Assert.Equal(
            Answer.Yes, ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Joint, tube, Bolt(1200, 1400, 1600), Gearbox, Blades))).Guards);
    }

    [Fact]
    public void Parts_WithoutAJointOrYoke_AreNotComplete()
    {
        ProtectionVerdict none = ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Tube, Bolt(1200, 1400, 1600), Gearbox, Blades)));
        Assert.Equal([PartKind.UniversalJoint], none.MissingParts);
        Assert.NotEqual(Headline.Protected, none.Headline);
        Part yoke = Part.Of(PartKind.Yoke, "yoke").WithDamageTorque(Nm(3000));
        Assert.Equal(Headline.Protected,
            ProtectionCheck.Run(With(DrivelineChain.Of(Stub, yoke, Tube, Bolt(1200, 1400, 1600), Gearbox, Blades))).Headline);
    }

    private static ProtectionVerdict Check(Engagement engagement) =>
        ProtectionCheck.Run(With(Bolt(1200, 1400, 1600)).WithEngagement(engagement));
}
