using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>What turns a Yes into a Maybe, a No or not known, one fact at a time, beside a cutter that has both Yes.</summary>
public class VerdictLogicTests
{
    private static readonly ProtectiveDevice Good = Bolt(1200, 1500, 2000);

    private static Part Bare => Part.Shaft("bare shaft");

    private static ProtectiveDevice AtLeast(double nm) => StatedDevice.Of(
        "pin", DeviceKind.ShearBolt, AfterTrip.TorqueGone, TorqueBand.AtLeast(Torque.FromNewtonMeters(nm), Stated));

    private static ProtectiveDevice Seized => ShearBoltDevice.Of("seized bolt", ShearBoltJoint.ThroughShaft(
        ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade2).With(PlaneThrough.Shank), Length.FromInches(1.25))
            .WithHub(HubState.Seized));

    private static ProtectiveDevice Stuck => SlipClutchDevice.Of("clutch", Driveline.Clutches.SlipTorque.Of(
        Clutches.Build.NineSprings(), Clutches.Build.Clean(Driveline.Clutches.RunInState.RunIn).Stuck()));

    private static ProtectionVerdict Of(params Element[] elements) => ProtectionCheck.Run(With(DrivelineChain.Of(elements)));

    private static Answer Guards(PartLimit tube, ProtectiveDevice device) =>
        Of(Stub, Joint, Part.Shaft("drive tube").WithLimit(tube), device, Gearbox, Blades).Parts[2].Guards;

    [Theory]
    [InlineData(true, Answer.No)]
    [InlineData(false, Answer.NotKnown)]
    public void Guards_NoDevice_DependsOnWhetherTheListIsWhole(bool complete, Answer answer)
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Tube)).WithPartsComplete(complete));
        Assert.Equal(answer, verdict.Guards);
        Assert.All(verdict.Parts, p => Assert.Equal(answer, p.Guards));
    }

    // A bolt on a seized hub never acts: a No even of a part whose limit nobody knows. Beside a device not known it is no No.
    [Fact]
    public void Guards_DeviceThatNeverLetsGo_IsANo()
    {
        ProtectionVerdict verdict = Of(Stub, Joint, Bare, Seized, Gearbox, Blades);
        Assert.All(verdict.Parts, p => Assert.Equal(Answer.No, p.Guards));
        Assert.Equal(Answer.No, verdict.Guards);
        Assert.Equal(Answer.NotKnown, Of(Stub, StatedDevice.NotIdentified("x"), Seized, Tube).Parts[^1].Guards);
        Assert.Equal(Answer.Yes, Of(Stub, Good, Seized, Tube).Parts[^1].Guards);
    }

    [Fact]
    public void Guards_LimitNotKnown_IsNotKnownAndBarsTheYes()
    {
        ProtectionVerdict verdict = Of(Stub, Joint, Tube, Bare, Good, Gearbox, Blades);
        Assert.Equal(Answer.NotKnown, verdict.Parts[3].Guards);
        Assert.Equal(Answer.Maybe, verdict.Guards);
    }

    // One part of unknown strength bars the Yes, and so do two.
    [Fact]
    public void Guards_TwoLimitsNotKnown_BarTheYesToo()
    {
        ProtectionVerdict verdict = Of(Stub, Joint, Tube, Bare, Bare, Good, Gearbox, Blades);
        Assert.Equal(Answer.Maybe, verdict.Guards);
        Assert.Equal(Answer.Maybe, Of(Stub, Joint, Tube, Bare, Bare, Bare, Good, Gearbox, Blades).Guards);
    }

    [Fact]
    public void Guards_ChainThatBeginsWithASeizedBolt_IsANo() => Assert.Equal(Answer.No, Of(Seized, Bare).Parts[^1].Guards);

    // Each note is asked, not the first alone.
    [Fact]
    public void Notes_OneThatBarsBehindOneThatDoesNot_Bars()
    {
        Finding mild = Finding.NotKnown("made.up").BarringNothing(), grave = Finding.NotKnown("made.up");
        Assert.Equal((Answer.Yes, Answer.Yes), Answers(With(Good).WithNotes([mild, mild])));
        Assert.Equal((Answer.Maybe, Answer.Maybe), Answers(With(Good).WithNotes([mild, grave])));
        Assert.Equal((Answer.Maybe, Answer.Yes), Answers(With(Good).WithNotes([mild, grave.Barring(Bars.Guards)])));
    }

    [Fact]
    public void Run_WithoutQuestionOrPolicy_IsRefused()
    {
        Assert.Throws<ArgumentNullException>(() => ProtectionCheck.Run(null!));
        Assert.Throws<ArgumentNullException>(() => ProtectionCheck.Run(With(Good), null!));
    }

    // A rating says where a part still holds, never where it fails; what never acts passes any rating, what might act earlier does not.
    [Fact]
    public void Guards_RatingAlone_IsNoOnlyWhereTheDeviceNeverActs()
    {
        PartLimit rating = PartLimit.Rating(Torque.FromNewtonMeters(460));
        Assert.Equal(Answer.Maybe, Guards(rating, AtLeast(1200)));
        Assert.Equal(Answer.Maybe, Guards(rating, Good));
        Assert.Equal(Answer.No, Guards(rating, Stuck));
        Assert.Equal(Answer.No, Guards(PartLimit.DamageTorque(Nm(2100, 2300, 2600)), Stuck));
        Assert.Equal(Answer.Maybe, Guards(PartLimit.DamageTorque(Nm(2100, 2300, 2600)), AtLeast(1200)));
    }

    // Whatever damages it, it is less than what never acts lets through; so too where nothing acts at all.
    [Fact]
    public void Guards_LeastDamageTorqueAlone_IsNoWhereNothingActs()
    {
        PartLimit least = PartLimit.DamageTorque(TorqueBand.AtLeast(Torque.FromNewtonMeters(2100), Stated));
        Assert.Equal(Answer.No, Guards(least, Stuck));
        ProtectionVerdict branched = Of(
            Stub, Branch.Of("side", RatioBand.Exactly(0.5, Stated), Good, Tube), Part.Shaft("open").WithLimit(least));
        Assert.Equal(Answer.No, branched.Parts.Single(p => p.Part.Name == "open").Guards);
        Assert.Equal(Answer.Maybe, Guards(least, AtLeast(1200)));
        Assert.Equal(Answer.Maybe, Guards(least, Bolt(1200, 1500, 2200)));
        Assert.Equal(Answer.Yes, Guards(least, Good));
    }

    // 500 times a factor of 2 that nobody sourced: 1000 expected, below the bolt's 1500. An assumption makes no No, and no Yes.
    [Fact]
    public void Guards_FactorNobodySourced_IsNeverMoreThanMaybe()
    {
        RatioBand factor = RatioBand.Between(1.5, 2, 3, Stated);
        Assert.Equal(Answer.Maybe, Guards(PartLimit.RatedTimes(Torque.FromNewtonMeters(500), factor, false), Good));
        Assert.Equal(Answer.No, Guards(PartLimit.RatedTimes(Torque.FromNewtonMeters(500), factor, true), Good));
        Assert.Equal(Answer.Maybe, Guards(PartLimit.RatedTimes(Torque.FromNewtonMeters(1900), factor, false), Good));
        Assert.Equal(Answer.Yes, Guards(PartLimit.RatedTimes(Torque.FromNewtonMeters(1900), factor, true), Good));
    }

    // 2100 / 2000 = 1.05 and a rating of 2100 alike: a margin of 1.05 must be exceeded, one of 1.04 is.
    [Theory]
    [InlineData(1.04, Answer.Yes)]
    [InlineData(1.05, Answer.Maybe)]
    [InlineData(1.06, Answer.Maybe)]
    public void Guards_PolicyAsksForAMargin_MustBeExceeded(double margin, Answer answer)
    {
        ProtectionPolicy policy = ProtectionPolicy.Default.WithMinimumGuardMargin(margin);
        Assert.Equal(answer, ProtectionCheck.Run(With(Good), policy).Guards);
        PartLimit rated = PartLimit.RatedTimes(Torque.FromNewtonMeters(2100), RatioBand.Exactly(2, Stated), false);
        Assert.Equal(answer, ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Part.Shaft("tube").WithLimit(rated), Good, Gearbox, Blades)), policy).Guards);
    }

    [Fact]
    public void Guards_OneUnknownOfTwoDevices_StillAnswersForTheKnown()
    {
        Assert.Equal(Answer.NotKnown, Of(Stub, StatedDevice.NotIdentified("x"), Tube).Parts[^1].Guards);
        Assert.Equal(Answer.Yes, Of(Stub, StatedDevice.NotIdentified("x"), Good, Tube).Parts[^1].Guards);
    }

    // Limits that nobody stated but the type of PTO are no knowledge; beside a stated one the answer is Maybe.
    [Fact]
    public void Guards_DefaultLimitsAlone_AreNotKnown()
    {
        Part stub = Part.Of(PartKind.PtoStub, "PTO stub").WithLimit(PartLimit.ImpliedByPtoType(Nm(3000)));
        Assert.Equal(Answer.NotKnown, Of(stub, Good).Guards);
        Assert.Equal(Answer.NotKnown, Of(Bare, Good).Guards);
        Assert.Equal(Answer.Maybe, Of(stub, Joint, Tube, Good, Gearbox, Blades).Guards);
        Assert.Equal(Answer.Yes, Of(Stub, Joint, Tube, Good, Gearbox, Blades).Guards);
    }

    // One part behind a gearbox of unknown ratio: nothing is known of it, and that bars the whole.
    [Fact]
    public void Guards_OnePartNotKnown_BarsTheYesOfTheRest()
    {
        ProtectionVerdict verdict = Of(
            Stub, Joint, Tube, Good, Part.Gearbox("gearbox").WithDamageTorque(Nm(2900)), Part.Shaft("late").WithDamageTorque(Nm(9000)),
            Blades);
        Assert.Equal(Answer.NotKnown, verdict.Parts.Single(p => p.Part.Name == "late").Guards);
        Assert.Equal(Answer.Maybe, verdict.Guards);
    }

    [Fact]
    public void Both_FactsOfTheListMissing_BarBoth()
    {
        ProtectionQuestion full = With(Good);
        Assert.Equal((Answer.Yes, Answer.Yes), Answers(full));
        Assert.Equal((Answer.Maybe, Answer.Maybe), Answers(full.WithPartsComplete(false)));
        Assert.Equal((Answer.Maybe, Answer.Maybe), Answers(full.WithMachine(MachineKind.NotKnown)));
        Assert.Equal((Answer.Maybe, Answer.Maybe), Answers(With(DrivelineChain.Of(Stub, Tube, Good, Gearbox, Blades))));   // no joint
        Assert.Equal((Answer.Yes, Answer.Maybe), Answers(full.WithEngagement(Engagement.NotKnown)));
        Assert.Equal((Answer.Yes, Answer.NotKnown), Answers(full.WithWork(null)));
    }

    // 1200 / 1000 = 1.2 must exceed what the policy asks for.
    [Theory]
    [InlineData(1.19, Answer.Yes)]
    [InlineData(1.2, Answer.Maybe)]
    public void Quiet_PolicyAsksForAMargin_MustBeExceeded(double margin, Answer answer) => Assert.Equal(
        answer, ProtectionCheck.Run(With(Good), ProtectionPolicy.Default.WithMinimumWorkMargin(margin)).Quiet);

    [Fact]
    public void Quiet_TripsSeen_IsANoOfTheDeviceOnlyWhereThereIsOne()
    {
        ProtectionVerdict one = ProtectionCheck.Run(With(Good).WithTripsInNormalWork(true));
        Assert.Equal(Answer.No, one.Quiet);
        Assert.Equal(Answer.No, one.Devices[0].Quiet);
        ProtectionVerdict two = ProtectionCheck.Run(
            With(DrivelineChain.Of(Stub, Joint, Tube, Good, Good, Gearbox, Blades)).WithTripsInNormalWork(true));
        Assert.Equal(Answer.No, two.Quiet);
        Assert.All(two.Devices, d => Assert.Equal(Answer.Yes, d.Quiet));   // nobody saw which
        Assert.Equal(Answer.NotKnown, ProtectionCheck.Run(With(DrivelineChain.Of(Stub, Tube)).WithTripsInNormalWork(true)).Quiet);
        Assert.Equal(Answer.Yes, ProtectionCheck.Run(With(Good).WithTripsInNormalWork(false)).Devices[0].Quiet);
    }

    [Fact]
    public void Quiet_TwoDevices_TheWorseCounts()
    {
        Assert.Equal(Answer.Maybe, Of(Stub, Joint, Tube, Good, Bolt(900, 1500, 2000), Gearbox, Blades).Quiet);
        Assert.Equal(Answer.Maybe, Of(Stub, Joint, Tube, Bolt(900, 1500, 2000), Good, Gearbox, Blades).Quiet);
        Assert.Equal(Answer.No, Of(Stub, Joint, Tube, Good, Bolt(500, 650, 900), Gearbox, Blades).Quiet);
        Assert.Equal(Answer.NotKnown, Of(Stub, Joint, Tube, Good, StatedDevice.NotIdentified("x"), Gearbox, Blades).Quiet);
        Assert.Equal(Answer.NotKnown, Of(Stub, Joint, Tube, StatedDevice.NotIdentified("x"), Good, Gearbox, Blades).Quiet);
    }

    // A default factor on a stated mean: it may be above the bolt or below, the answer is Maybe.
    [Theory]
    [InlineData(100)]
    [InlineData(1400)]
    public void Quiet_WorkAssumed_IsMaybe(double meanNm)
    {
        WorkPeak assumed = WorkPeak.FromMean(Nm(meanNm), MachineKind.RotaryCutter);
        Assert.True(assumed.IsAssumed && assumed.Torque.HasExpected);
        Assert.Equal(Answer.Maybe, ProtectionCheck.Run(With(Good).WithWork(assumed)).Devices[0].Quiet);
    }

    [Fact]
    public void Quiet_WorkWithoutAnExpectedPeak_IsNotKnown()
    {
        WorkPeak atLeast = WorkPeak.Stated(TorqueBand.AtLeast(Torque.FromNewtonMeters(700), Stated));
        Assert.Equal(Answer.NotKnown, ProtectionCheck.Run(With(Good).WithWork(atLeast)).Devices[0].Quiet);
    }

    private static (Answer Guards, Answer Quiet) Answers(ProtectionQuestion question)
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(question);
        return (verdict.Guards, verdict.Quiet);
    }
}
