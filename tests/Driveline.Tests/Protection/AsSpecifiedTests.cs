using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Tests.Clutches;
using UnitsNet;

namespace Driveline.Tests.Protection;

public class AsSpecifiedTests
{
    private static readonly ScrewThread ThreeEighths = ScrewThread.Parse("3/8-16 UNC");
    private static readonly ScrewThread Half = ScrewThread.Parse("1/2-13 UNC");

    private static ShearBoltJoint Joint(ScrewThread thread, string grade) =>
        ShearBoltJoint.ThroughShaft(ShearBolt.Of(thread, BoltGrade.Parse(grade)).With(PlaneThrough.Shank), Length.FromInches(1.25))
            .WithHub(HubState.Free).WithHoleFit(HoleFit.Tight);

    private static ShearBoltDevice Fitted(ShearBoltJoint joint) => ShearBoltDevice.Of("shear bolt", joint);

    private static ShearBoltJoint Manuals => Joint(ThreeEighths, "SAE 5");

    // No torque of work, engagement or damage is known: what an owner knows after reading the manual and looking.
    private static ProtectionQuestion Owner(ProtectiveDevice fitted) => ProtectionQuestion
        .About(DrivelineChain.Of(Part.Of(PartKind.UniversalJoint, "joint"), Part.Shaft("drive tube"), fitted, Part.Gearbox("gearbox")))
        .WithMachine(MachineKind.RotaryCutter);

    private static ProtectionVerdict Check(ShearBoltJoint fitted) =>
        ProtectionCheck.Run(Owner(Fitted(fitted)).WithSpecified(Fitted(Manuals)));

    [Fact]
    public void Headline_ManualsBoltInOrderAndNoLimitKnown_IsAsSpecified()
    {
        ProtectionVerdict verdict = Check(Manuals);
        Assert.Equal(Answer.Yes, verdict.AsSpecified.Answer);
        Assert.Equal(Headline.AsSpecified, verdict.Headline);
        Assert.Equal(Answer.NotKnown, verdict.Guards);
        Assert.Equal(
            [SpecifiedFindings.Size, SpecifiedFindings.Grade, SpecifiedFindings.Plane, SpecifiedFindings.HubTurns,
                SpecifiedFindings.HolesRound],
            verdict.AsSpecified.For.Select(f => f.Code));
    }

    [Fact]
    public void Standing_AsSpecifiedAndLookedOver_IsGoOn()
    {
        ProtectionQuestion question = Owner(Fitted(Manuals)).WithSpecified(Fitted(Manuals));
        Assert.Equal(StandingState.GoOn, ProtectionCheck.Run(question.WithLookedOver(true)).Standing.State);
        Assert.Equal(StandingState.WithCare, ProtectionCheck.Run(question).Standing.State);
        Assert.Equal(StandingState.Stop, ProtectionCheck.Run(
            question.WithLookedOver(true).WithDefects([SeenDefect.TubeTwisted])).Standing.State);
    }

    [Theory]
    [InlineData("size", Answer.No, SpecifiedFindings.OtherSize)]
    [InlineData("higher grade", Answer.No, SpecifiedFindings.OtherGrade)]
    [InlineData("lower grade", Answer.No, SpecifiedFindings.OtherGrade)]
    [InlineData("seized", Answer.No, ShearBoltFindings.HubSeized)]
    [InlineData("stiff", Answer.No, ShearBoltFindings.HubStiff)]
    [InlineData("worn holes", Answer.No, ShearBoltFindings.HoleWornAroundBolt)]
    [InlineData("marks of another grade", Answer.No, ShearBoltFindings.MarksContradict)]
    [InlineData("plane not known", Answer.Maybe, ShearBoltFindings.PlaneNotKnown)]
    [InlineData("hub not tried", Answer.Maybe, ShearBoltFindings.HubFreedomNotKnown)]
    [InlineData("holes not looked at", Answer.Maybe, SpecifiedFindings.HolesNotKnown)]
    public void AsSpecified_OneFactOtherwise_IsNoYesAndNamed(string what, Answer expected, string code)
    {
        ProtectionVerdict verdict = Check(what switch
        {
            "size" => Joint(Half, "SAE 5"),
            "higher grade" => Joint(ThreeEighths, "SAE 8"),
            "lower grade" => Joint(ThreeEighths, "SAE 2"),
            "seized" => Manuals.WithHub(HubState.Seized),
            "stiff" => Manuals.WithHub(HubState.Stiff),
            "worn holes" => Manuals.WithHoleFit(HoleFit.Worn),
            "marks of another grade" => Manuals.With(Manuals.Bolt.WithHeadMark(HeadMark.Parse("six radial lines"))),
            "plane not known" => Manuals.With(Manuals.Bolt.With(PlaneThrough.NotKnown)),
            "hub not tried" => Manuals.WithHub(HubState.NotKnown),
            _ => Manuals.WithHoleFit(HoleFit.NotKnown),
        });
        Assert.Equal(expected, verdict.AsSpecified.Answer);
        Assert.NotEqual(Headline.AsSpecified, verdict.Headline);
        Assert.Contains(code, verdict.AsSpecified.Against.Concat(verdict.AsSpecified.Open).Select(f => f.Code));
    }

    [Fact]
    public void AsSpecified_ManualNotKnownOrNoDevice_IsNotKnown()
    {
        Assert.Equal(Answer.NotKnown, ProtectionCheck.Run(Owner(Fitted(Manuals))).AsSpecified.Answer);
        Assert.Equal(Answer.NotKnown,
            ProtectionCheck.Run(ProtectionQuestion.About(DrivelineChain.Of(Part.Shaft("drive tube")))).AsSpecified.Answer);
        Assert.Equal(Answer.NotKnown, ProtectionCheck.Run(
            Owner(StatedDevice.NotIdentified("shear bolt")).WithSpecified(Fitted(Manuals))).AsSpecified.Answer);
    }

    // hand: the bolt parts from 1035 to 1828 N·m; a tube of 1500 N·m may go first, one of 5000 N·m leaves room, a default says nothing
    [Theory]
    [InlineData(1500, false)]
    [InlineData(5000, true)]
    public void Headline_StatedLimit_SpoilsOnlyWithoutMargin(double tubeNm, bool isAsSpecified)
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(ProtectionQuestion
            .About(DrivelineChain.Of(
                Part.Shaft("drive tube").WithDamageTorque(Thornbeck.Nm(tubeNm)), Fitted(Manuals), Part.Gearbox("gearbox")))
            .WithMachine(MachineKind.RotaryCutter).WithSpecified(Fitted(Manuals)));
        Assert.Equal(isAsSpecified, verdict.Headline == Headline.AsSpecified);
    }

    [Fact]
    public void Headline_WorkStatedAboveTheWeakBolt_IsNotAsSpecified()
    {
        // hand: a weak bolt parts at 1035 N·m, work reaches 1200
        ProtectionQuestion question = Owner(Fitted(Manuals)).WithSpecified(Fitted(Manuals));
        Assert.NotEqual(Headline.AsSpecified,
            ProtectionCheck.Run(question.WithWork(WorkPeak.Stated(Thornbeck.Nm(500, 900, 1200)))).Headline);
        Assert.Equal(Headline.AsSpecified,
            ProtectionCheck.Run(question.WithWork(WorkPeak.Stated(Thornbeck.Nm(300, 400, 450)))).Headline);
    }

    [Fact]
    public void Headline_BothAnswersYes_StaysProtected()
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(Thornbeck.Bolt(1150, 1300, 1500))
            .WithSpecified(Thornbeck.Bolt(1150, 1300, 1500)));
        Assert.Equal(Headline.Protected, verdict.Headline);
        Assert.Equal(Answer.Maybe, verdict.AsSpecified.Answer);   // a stated torque tells nothing of the hub
    }

    // The clutch is set to 29.0 mm; a test since storage is told or not.
    [Theory]
    [InlineData(29.0, true, Answer.Yes)]
    [InlineData(29.4, true, Answer.Yes)]
    [InlineData(27.0, true, Answer.No)]
    [InlineData(29.0, false, Answer.Maybe)]
    public void AsSpecified_ClutchBySpringLengthAndSlipTest_IsAsTold(double namedMm, bool isTested, Answer expected)
    {
        LengthBand Mm(double mm) => LengthBand.Between(
            Length.FromMillimeters(mm), Length.FromMillimeters(mm), Length.FromMillimeters(mm), Thornbeck.Stated);
        ClutchCondition condition = isTested ? Build.Trusted(RunInState.RunIn) : Build.Clean(RunInState.RunIn);
        DiscClutch clutch = Build.NineSprings().WithFacing(Facings.MouldedLining);
        double fittedMm = clutch.SpringLength!.Expected!.Value.Millimeters;
        ProtectionVerdict verdict = ProtectionCheck.Run(
            Owner(SlipClutchDevice.Of("clutch", SlipTorque.Of(clutch, condition)))
                .WithSpecified(StatedDevice.SetTo(
                    "specified clutch", DeviceKind.SlipClutch, AfterTrip.TorqueHeld, Mm(namedMm - 29 + fittedMm))));
        Assert.Equal(expected, verdict.AsSpecified.Answer);
        Assert.Equal(expected == Answer.Yes, verdict.Headline == Headline.AsSpecified);
    }

    [Fact]
    public void Headline_EveryConstant_KeepsItsNumber() => Assert.Equal(
        ["NotKnown=0", "NoSettingFits=1", "DoesNotProtect=2", "TripsInWork=3", "Doubtful=4", "Protected=5", "AsSpecified=6"],
        Enum.GetValues<Headline>().Select(h => h + "=" + (int)h));
}
