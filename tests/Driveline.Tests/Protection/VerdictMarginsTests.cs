using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>The weakest part, the first device, the margins and the headline of a verdict.</summary>
public class VerdictMarginsTests
{
    private static readonly ProtectiveDevice Good = Bolt(1200, 1500, 2000);

    private static Part Limited(string name, double low, double expected, double high) =>
        Part.Shaft(name).WithDamageTorque(Nm(low, expected, high));

    private static ProtectionVerdict Of(params Element[] elements) => ProtectionCheck.Run(With(DrivelineChain.Of(elements)));

    [Fact]
    public void Headline_WorkAboveAPartsLimit_IsHopelessOnlyWhenStated()
    {
        // At the PTO 800 N·m is expected of work; behind a gearbox of ratio 2 and η 1 that is 400 N·m.
        Part weak = Limited("weak", 300, 390, 500), even = Limited("even", 300, 400, 500);
        Part gearbox = Part.Gearbox("gearbox", 2).WithEfficiency(1).WithDamageTorque(Nm(2900));
        Assert.Equal(Headline.NoSettingFits, Of(Stub, Joint, Tube, Good, gearbox, weak, Blades).Headline);
        Assert.NotEqual(Headline.NoSettingFits, Of(Stub, Joint, Tube, Good, gearbox, even, Blades).Headline);
        DrivelineChain chain = DrivelineChain.Of(Stub, Joint, Tube, Good, gearbox, weak, Blades);
        Assert.NotEqual(Headline.NoSettingFits, ProtectionCheck.Run(
            With(chain).WithWork(WorkPeak.FromMean(Nm(800), MachineKind.RotaryCutter))).Headline);
        Assert.NotEqual(Headline.NoSettingFits, ProtectionCheck.Run(With(chain).WithWork(null)).Headline);
        Part assumed = Part.Shaft("weak").WithLimit(
            PartLimit.RatedTimes(Torque.FromNewtonMeters(195), RatioBand.Exactly(2, Stated), false));
        Assert.NotEqual(Headline.NoSettingFits, Of(Stub, Joint, Tube, Good, gearbox, assumed, Blades).Headline);
        Assert.NotEqual(Headline.NoSettingFits, Of(Stub, Joint, Tube, Good, Part.Gearbox("gearbox"), weak, Blades).Headline);
    }

    [Fact]
    public void Headline_EachPairOfAnswers_HasItsWord()
    {
        Assert.Equal(Headline.Protected, ProtectionCheck.Run(With(Good)).Headline);
        Assert.Equal(Headline.NotKnown, ProtectionCheck.Run(With(Good).WithWork(null)).Headline);
        Assert.Equal(Headline.NotKnown, Of(Part.Shaft("bare"), Good).Headline);
        Assert.Equal(Headline.Doubtful, ProtectionCheck.Run(With(Good).WithEngagement(Engagement.NotKnown)).Headline);
        Assert.Equal(Headline.Doubtful, ProtectionCheck.Run(With(Bolt(1200, 1500, 2200))).Headline);
        Assert.Equal(Headline.TripsInWork, ProtectionCheck.Run(With(Bolt(500, 650, 900))).Headline);
        Assert.Equal(Headline.DoesNotProtect, ProtectionCheck.Run(With(Bolt(500, 2500, 2600)).WithTripsInNormalWork(true)).Headline);
    }

    // By the expected value at the PTO: 300 behind a gearbox of ratio 2 (η 1) is 600 there.
    [Fact]
    public void WeakestPart_AtThePto_IsTheLowestExpected()
    {
        Part gearbox = Part.Gearbox("gearbox", 2).WithEfficiency(1);
        Assert.Equal("late", Of(Limited("early", 500, 601, 700), Good, gearbox, Limited("late", 250, 300, 350)).WeakestPart!.Part.Name);
        Assert.Equal("early", Of(Limited("early", 500, 599, 700), Good, gearbox, Limited("late", 250, 300, 350)).WeakestPart!.Part.Name);
        Assert.Equal("early", Of(Limited("early", 500, 600, 700), Good, gearbox, Limited("late", 250, 300, 350)).WeakestPart!.Part.Name);
        Assert.Equal("late", Of(Limited("early", 500, 600, 700), Good, gearbox, Limited("late", 240, 300, 350)).WeakestPart!.Part.Name);
        Assert.Equal("early", Of(Limited("early", 500, 599, 700), Good, gearbox, Limited("late", 240, 300, 350)).WeakestPart!.Part.Name);
    }

    [Fact]
    public void WeakestPart_RatingsDefaultsAndUnknownRatios_AreLeftOut()
    {
        Part rated = Part.Shaft("rated").WithLimit(PartLimit.Rating(Torque.FromNewtonMeters(100)));
        Part usual = Part.Shaft("usual").WithLimit(PartLimit.ImpliedByPtoType(Nm(100)));
        Part lost = Limited("lost", 100, 100, 100);
        Assert.Equal("tube", Of(rated, usual, Limited("tube", 500, 600, 700), Good, Part.Gearbox("box"), lost).WeakestPart!.Part.Name);
        Assert.Null(Of(rated, usual, Part.Shaft("bare"), Good).WeakestPart);
        Assert.Null(Of(Good, Part.Gearbox("box"), lost).WeakestPart);
    }

    [Fact]
    public void FirstDevice_AtThePto_IsTheLowestExpected()
    {
        Part gearbox = Part.Gearbox("gearbox", 2).WithEfficiency(1);
        ProtectiveDevice late = StatedDevice.Of("late", DeviceKind.ShearBolt, AfterTrip.TorqueGone, Nm(700, 740, 800));
        Assert.Equal("late", Of(Good, gearbox, late).FirstDevice!.Name);   // 740 · 2 = 1480, below 1500
        Assert.Equal("shear bolt", Of(Bolt(1200, 1470, 2000), gearbox, late).FirstDevice!.Name);
        Assert.Equal("shear bolt", Of(Bolt(1200, 1480, 2000), gearbox, late).FirstDevice!.Name);   // tied: nearer the tractor
        Assert.Equal("late", Of(StatedDevice.NotIdentified("x"), late).FirstDevice!.Name);
        Assert.Equal("shear bolt", Of(Good, Part.Gearbox("gearbox"), late).FirstDevice!.Name);   // nobody knows where the late one acts
        Assert.Null(Of(StatedDevice.NotIdentified("x"), Tube).FirstDevice);
        Assert.Null(Of(Part.Gearbox("gearbox"), late).FirstDevice);
        Assert.Equal(1480, Of(Good, gearbox, late).Trip!.SiBand.Expected, 1e-9);
    }

    [Fact]
    public void Margins_OfSeveral_AreTheSmallest()
    {
        // Work 1000 at most: 1100/1000 and 1300/1000. Parts: 2400/1900 and 2100/1900 behind both (the lower high end of two in line).
        ProtectionVerdict verdict = Of(
            Bolt(1300, 1500, 2000), Bolt(1100, 1500, 1900), Limited("a", 2400, 2500, 2600), Limited("b", 2100, 2500, 2600));
        Assert.Equal(1.1, verdict.WorkMargin!.Value, 1e-12);
        Assert.Equal(2100.0 / 1900, verdict.GuardMargin!.Value, 1e-12);
        Assert.Equal(2400.0 / 1900, verdict.Parts[0].Margin!.Value, 1e-12);
        ProtectionVerdict turned = Of(
            Bolt(1100, 1500, 1900), Bolt(1300, 1500, 2000), Limited("b", 2100, 2500, 2600), Limited("a", 2400, 2500, 2600));
        Assert.Equal(1.1, turned.WorkMargin!.Value, 1e-12);
        Assert.Equal(2100.0 / 1900, turned.GuardMargin!.Value, 1e-12);
        Assert.Null(Of(Part.Shaft("bare")).GuardMargin);
    }

    [Fact]
    public void PartMargin_WhereNoneIsKnown_IsNullOrNothing()
    {
        ProtectiveDevice atLeast = StatedDevice.Of(
            "pin", DeviceKind.ShearBolt, AfterTrip.TorqueGone, TorqueBand.AtLeast(Torque.FromNewtonMeters(1200), Stated));
        Assert.Equal(0, Of(atLeast, Tube).Parts[0].Margin);
        Assert.Empty(Of(atLeast, Tube).Parts[0].Sheet());
        Assert.Null(Of(Good, Part.Shaft("usual").WithLimit(PartLimit.ImpliedByPtoType(Nm(3000)))).Parts[0].Margin);
        Assert.Null(Of(Good, Part.Shaft("bare")).Parts[0].Margin);
        Assert.Null(Of(StatedDevice.NotIdentified("x"), Tube).Parts[0].Margin);
        Assert.Null(Of(Good, Part.Shaft("rated").WithLimit(PartLimit.Rating(Torque.FromNewtonMeters(1999)))).Parts[0].Margin);
        Assert.Equal(1, Of(Good, Part.Shaft("rated").WithLimit(PartLimit.Rating(Torque.FromNewtonMeters(2000)))).Parts[0].Margin);
        Assert.Null(Of(Bolt(0, 0, 0), Tube).Parts[0].Margin);
    }

    [Fact]
    public void Sheets_OfPartAndDevice_HaveBothSidesAndTheirQuotient()
    {
        ProtectionVerdict verdict = Of(Stub, Joint, Tube, Good, Gearbox, Blades);
        Assert.Equal([2100, 2000, 1.05], verdict.Parts[2].Sheet().Select(l => l.Value));
        Assert.Equal(["partTorque", "deviceHigh", "guardMargin"], verdict.Parts[2].Sheet().Select(l => l.Formula.Code));
        Assert.Equal([1200, 1000, 1.2], verdict.Devices[0].Sheet().Select(l => l.Value));
        Assert.Equal(["deviceLow", "workPeak", "workMargin"], verdict.Devices[0].Sheet().Select(l => l.Formula.Code));
    }

    [Fact]
    public void DeviceMargin_WhereNoneIsKnown_IsNullOrNothing()
    {
        WorkPeak atLeast = WorkPeak.Stated(TorqueBand.AtLeast(Torque.FromNewtonMeters(700), Stated));
        Assert.Equal(0, ProtectionCheck.Run(With(Good).WithWork(atLeast)).Devices[0].Margin);
        Assert.Empty(ProtectionCheck.Run(With(Good).WithWork(atLeast)).Devices[0].Sheet());
        Assert.Null(ProtectionCheck.Run(With(Good).WithWork(null)).Devices[0].Margin);
        Assert.Null(ProtectionCheck.Run(With(Good).WithWork(WorkPeak.Stated(Nm(0)))).Devices[0].Margin);
        Assert.Null(ProtectionCheck.Run(With(StatedDevice.NotIdentified("x"))).Devices[0].Margin);
        Assert.Null(ProtectionCheck.Run(With(StatedDevice.NotIdentified("x"))).Devices[0].TripAtPto);
    }

    // Before the bolt from the work's side, behind it from the drive's; on a branch beside it from neither.
    [Fact]
    public void Side_OfAPart_FollowsTheWayToTheTractor()
    {
        ProtectionVerdict verdict = Of(
            Limited("before", 2100, 2300, 2600),
            Branch.Of("side", RatioBand.Exactly(0.5, Stated), Bolt(500, 600, 700), Limited("on", 900, 950, 990)),
            Bolt(700, 800, 900), Limited("behind", 1900, 1950, 1990));
        Assert.Equal([GuardSide.WorkSide, GuardSide.DriveSide, GuardSide.DriveSide], verdict.Parts.Select(p => p.Side));
        Assert.Equal(1600, verdict.Parts[0].ActsAtMost!.Value.NewtonMeters, 1e-9);   // 700 + 900
        Assert.Equal(700, verdict.Parts[1].ActsAtMost!.Value.NewtonMeters, 1e-9);
        Assert.Equal(GuardSide.NotGuarded, Of(Tube).Parts[0].Side);
        Assert.Null(Of(Tube).Parts[0].ActsAtMost);
    }

    // A bolt that comes first guards each part behind it from the drive's side; one that comes last, each before it from the work's.
    [Fact]
    public void Side_DeviceFirstOrLast_IsThatOfTheWayToIt()
    {
        Assert.All(Of(Good, Limited("near", 2100, 2300, 2600), Tube).Parts, p => Assert.Equal(GuardSide.DriveSide, p.Side));
        Assert.All(Of(Limited("far", 2100, 2300, 2600), Tube, Good).Parts, p => Assert.Equal(GuardSide.WorkSide, p.Side));
    }

    [Fact]
    public void ActsAt_WhereItIsKnownInPart_IsWhatIsKnown()
    {
        ProtectiveDevice atLeast = StatedDevice.Of(
            "pin", DeviceKind.ShearBolt, AfterTrip.TorqueGone, TorqueBand.AtLeast(Torque.FromNewtonMeters(1200), Stated));
        PartCheck pinned = Of(atLeast, Tube).Parts[0];
        Assert.Equal(1200, pinned.ActsAt!.Low.NewtonMeters);
        Assert.Null(pinned.ActsAtMost);
        PartCheck beside = Of(StatedDevice.NotIdentified("x"), Good, Tube).Parts[0];   // the one not known may act at any torque
        Assert.Equal(new Band(0, 1500, 2000), beside.ActsAt!.SiBand);
        Assert.Equal(2000, beside.ActsAtMost!.Value.NewtonMeters);
        Assert.Null(Of(StatedDevice.NotIdentified("x"), Tube).Parts[0].ActsAt);
        PartCheck behindBlades = Of(Stub, Good, Blades, Tube).Parts[^1];   // what the blades store passes the bolt
        Assert.Null(behindBlades.ActsAt);
        Assert.Null(behindBlades.ActsAtMost);
        Assert.Null(behindBlades.Margin);
    }

    // A gearbox of unstated efficiency between part and device counts in the torque, whichever of the two comes first.
    [Fact]
    public void ActsAt_AcrossAnAssumedEfficiency_RestsOnIt()
    {
        Part gearbox = Part.Gearbox("gearbox", 2);
        Assert.NotEqual(Stated, Of(Tube, gearbox, Good).Parts[0].ActsAt!.WeakestBasis);
        Assert.NotEqual(Stated, Of(Good, gearbox, Tube).Parts[^1].ActsAt!.WeakestBasis);
        Assert.Equal(Stated, Of(Good, Tube, gearbox).Parts[0].ActsAt!.WeakestBasis);
    }

    [Fact]
    public void TorquesAtThePto_AskedTwice_AreTheSame()
    {
        ProtectionVerdict verdict = Of(Good, Tube);
        Assert.Same(verdict.Parts[0].DamagedAtPto, verdict.Parts[0].DamagedAtPto);
        Assert.Same(verdict.Devices[0].TripAtPto, verdict.Devices[0].TripAtPto);
    }

    // A neck of 10 mm on 50 mm: 785.4 N·m / (78.54 mm² · 50 mm) = 200 MPa, the highest peak; 2e6 / 2^5 = 62 500 cycles, 40 an hour.
    [Fact]
    public void Fatigue_OfADevice_NeedsABoltAnEndOfTheWorkAndARate()
    {
        ProtectiveDevice necked = ShearBoltDevice.Of("neck", ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Neck).WithNeckDiameter(Length.FromMillimeters(10)),
            Length.FromMillimeters(50)));
        DeviceCheck known = Check(necked, WorkPeak.Stated(Nm(300, 500, 785.398)), 40);
        Close.Relative(62500, known.Fatigue!.Cycles!.Value, 1e-4, "2e6 / 2^5");
        Close.Relative(1562.5, known.Fatigue.Hours!.Value, 1e-4, "62 500 / 40");
        Assert.Same(known.Fatigue, known.Fatigue);
        Assert.Null(Check(necked, WorkPeak.Stated(TorqueBand.AtLeast(Torque.FromNewtonMeters(300), Stated)), 40).Fatigue);
        Assert.Null(Check(Good, WorkPeak.Stated(Nm(300)), 40).Fatigue);
        Assert.Null(Check(necked, WorkPeak.Stated(Nm(300)), null).Fatigue);
        Assert.Null(Check(necked, null, 40).Fatigue);

        static DeviceCheck Check(ProtectiveDevice device, WorkPeak? work, double? rate) => ProtectionCheck.Run(
            With(DrivelineChain.Of(device, Tube)).WithWork(work).WithPeaksPerHour(rate)).Devices[0];
    }

    [Fact]
    public void WeakestBasis_OfAVerdict_IsTheWeakestOfEveryNumber()
    {
        Basis memory = Basis.FromMemory("a guess");
        var guess = TorqueBand.Exactly(Torque.FromNewtonMeters(1500), memory);
        Assert.Equal(Stated, ProtectionCheck.Run(With(Good)).WeakestBasis);
        Assert.Equal(memory, ProtectionCheck.Run(
            With(StatedDevice.Of("bolt", DeviceKind.ShearBolt, AfterTrip.TorqueGone, guess))).WeakestBasis);
        Assert.Equal(memory, ProtectionCheck.Run(With(Good).WithWork(WorkPeak.Stated(guess))).WeakestBasis);
        Assert.Equal(memory, Of(Stub, Part.Shaft("tube").WithDamageTorque(guess), Good).WeakestBasis);
        Assert.Null(ProtectionCheck.Run(ProtectionQuestion.About(DrivelineChain.Of(Part.Shaft("bare")))).WeakestBasis);
    }
}
