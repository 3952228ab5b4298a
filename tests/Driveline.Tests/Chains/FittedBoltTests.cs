using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.ShearBolts;
using Driveline.Tests.Protection;
using UnitsNet;

namespace Driveline.Tests.Chains;

/// <summary>A joint as it was seen judges itself; facts that contradict each other are named and bar, never an exception.</summary>
public class FittedBoltTests
{
    private static readonly DateTime Today = new(2026, 5, 4);

    // Through a shaft of 30 mm the planes lie at 15 mm.
    [Fact]
    public void Told_Whole_IsTheJointOfItsFacts()
    {
        ShearBoltJoint joint = Plain().Joint!;
        Assert.Equal(JointLayout.ThroughShaft, joint.Layout);
        Assert.Equal(15, joint.Radius.Millimeters, 1e-9);
        Assert.Equal("ISO 8.8", joint.Bolt.Grade!.Designation);
        FittedBolt bolt = Plain();
        Assert.IsType<ShearBoltDevice>(bolt.Device);
        Assert.Same(bolt.Device, bolt.Device);
    }

    // Nobody told how it lies: then no shaft is known that its hub or its hole could contradict.
    [Fact]
    public void Told_WithoutALayout_TakesAnyHubAndHole()
    {
        FittedBolt bolt = FittedBolt.Undated("bolt").With(StatedBolt.OfThread(ScrewThread.Parse("M10")).WithBoltLength(Mm(60)))
            .WithHubDiameter(Mm(40)).WithHoleDiameter(Mm(45));
        Assert.Empty(bolt.Conflicts);
        Assert.Null(bolt.Device.Breakaway);
        Assert.Null(FittedBolt.Undated("bolt").WithHoleDiameter(Mm(2)).WithYokeEdge(Mm(1.5)).Device.Breakaway);
    }

    [Fact]
    public void Told_WithoutSizeLayoutOrRadius_IsThereButNotIdentified()
    {
        FittedBolt[] lacking =
        [
            Plain().With(StatedBolt.NotKnown), Plain().WithLayout(JointLayout.NotKnown), Plain().WithLayout(JointLayout.Tangential),
            Plain().WithLayout(JointLayout.BoltCircle).WithRadius(Mm(60)),
        ];
        Assert.All(lacking, bolt =>
        {
            Assert.Null(bolt.Joint);
            Assert.Null(bolt.Device.Breakaway);
            Assert.Empty(bolt.Conflicts);
        });
        Assert.Equal(60, Plain().WithLayout(JointLayout.BoltCircle).WithRadius(Mm(60)).WithBolts(2).Joint!.Radius.Millimeters, 1e-9);
    }

    public static TheoryData<string, string> Contradictions => new()
    {
        { "neckDiameter", "thread" },
        { "grade", "thread" },
        { "grade", "pinDiameter" },
        { "hardness", "thread" },
        { "planeThrough", "pinDiameter" },
        { "holeDiameter", "thread" },
        { "holeDiameter", "shaftDiameter" },
        { "shaftDiameter", "thread" },
        { "yokeEdge", "thread" },
        { "hubDiameter", "shaftDiameter" },
        { "boltCircleDiameter", "radius" },
    };

    [Theory]
    [MemberData(nameof(Contradictions))]
    public void Contradiction_OfTwoFacts_BarsBothYesAndNamesBoth(string fact, string other)
    {
        FittedBolt bolt = Contradicting(fact, other);
        FactConflict conflict = Assert.Single(bolt.Conflicts);
        Assert.Equal((fact, other), (conflict.Fact, conflict.Other));
        Assert.Null(bolt.Joint);
        ProtectionVerdict verdict = ProtectionCheck.Run(Thornbeck.With(bolt.Device));
        Assert.NotEqual(Answer.Yes, verdict.Guards);
        Assert.NotEqual(Answer.Yes, verdict.Quiet);
        Finding named = Assert.Single(verdict.Findings, f => f.Code == ShearBoltFindings.FactsContradict);
        Assert.Equal(Bars.Both, named.Bars);
        Assert.Equal(fact, named.Parameter("fact")!.Text);
        Assert.Equal(other, named.Parameter("other")!.Text);
    }

    [Theory]
    [InlineData(12, false)]
    [InlineData(13, true)]
    public void HubSeen_MonthsBeforeTheDay_IsTooOldAfterTwelve(int months, bool isTooOld)
    {
        FittedBolt bolt = Plain().WithHubSeen(Today.AddMonths(-months));
        Assert.Equal(isTooOld, bolt.Device.GuardBars.Any(f => f.Code == ShearBoltFindings.HubFreedomTooOld));
    }

    [Fact]
    public void HubSeen_Undated_IsTooOld() => Assert.Contains(
        FittedBolt.Undated("bolt").With(Plain().Stated).WithLayout(JointLayout.ThroughShaft).WithShaftDiameter(Mm(30))
            .WithHub(HubState.Free).WithHubSeen(Today).Device.GuardBars,
        f => f.Code == ShearBoltFindings.HubFreedomTooOld);

    [Fact]
    public void LastTrip_AfterTheDay_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Plain().WithLastTrip(Today.AddDays(1)));

    // The fitted bolt is cut through its shank, so the manual's, of which no plane is told, is too.
    [Fact]
    public void Specified_PlainBolt_IsCutWhereTheFittedOneIs()
    {
        var fitted = (ShearBoltDevice)Plain().Device;
        ShearBoltDevice named = fitted.Specified(StatedBolt.OfThread(ScrewThread.Parse("M10")).With(MaterialName.Parse("5.8")))!;
        Assert.Equal(PlaneThrough.Shank, named.BreakTorque.Joint.Bolt.PlaneThrough);
        Assert.Null(fitted.Specified(StatedBolt.NotKnown));
    }

    private static FittedBolt Contradicting(string fact, string other) => (fact, other) switch
    {
        ("neckDiameter", _) => Plain().With(Plain().Stated.With(PlaneThrough.Neck).WithNeckDiameter(Mm(11))),
        ("grade", "thread") => Plain().With(Plain().Stated.With(MaterialName.Parse("SAE 2"))),
        ("grade", _) => Plain().With(StatedBolt.OfPin(Mm(10)).With(MaterialName.Parse("8.8"))),
        ("hardness", _) => Plain().With(Plain().Stated.With(Hardness.Parse("HRC 3"))),
        ("planeThrough", _) => Plain().With(StatedBolt.OfPin(Mm(10)).With(PlaneThrough.Thread)),
        ("holeDiameter", "thread") => Plain().WithHoleDiameter(Mm(9)),
        ("holeDiameter", _) => Plain().WithHoleDiameter(Mm(30)),
        ("shaftDiameter", _) => Plain().WithShaftDiameter(Mm(10)),
        ("yokeEdge", _) => Plain().WithYokeEdge(Mm(5)),
        ("hubDiameter", _) => Plain().WithHubDiameter(Mm(30)),
        _ => Plain().WithLayout(JointLayout.BoltCircle).WithBolts(1).WithRadius(Mm(60)).WithBoltCircleDiameter(Mm(60)),
    };

    private static FittedBolt Plain() => FittedBolt.AsOf("bolt", Today)
        .With(StatedBolt.OfThread(ScrewThread.Parse("M10")).With(MaterialName.Parse("8.8")).With(PlaneThrough.Shank))
        .WithLayout(JointLayout.ThroughShaft).WithShaftDiameter(Mm(30)).WithHub(HubState.Free);

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
