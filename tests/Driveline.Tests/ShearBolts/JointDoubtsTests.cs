using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class JointDoubtsTests
{
    private static readonly Basis Sheet = Basis.Given("the maker's sheet");

    public static TheoryData<string> Joints => [.. Made.Keys];

    private static Dictionary<string, ShearBoltJoint> Made { get; } = new()
    {
        ["graded, shank"] = Circle(Graded(Iso898.Class4_6).With(PlaneThrough.Shank), 1),
        ["graded, thread"] = Circle(Graded(Iso898.Class8_8).With(PlaneThrough.Thread), 1),
        ["plane not known"] = Circle(Graded(Iso898.Class4_6), 1),
        ["plane not known, neck told"] = Circle(Graded(Iso898.Class4_6).WithNeckDiameter(Length.FromMillimeters(7)), 1),
        ["worn holes"] = Circle(Graded(Iso898.Class4_6).With(PlaneThrough.Shank), 2),
        ["gap and drag"] = Circle(Graded(Iso898.Class8_8).With(PlaneThrough.Shank), 1).WithStandOff(Length.FromMillimeters(3))
            .WithHubFriction(Exactly(60)).WithFlangeFriction(Exactly(40)),
    };

    // Strength 600/400 = 1.5, ratio of mild steel 0.85/0.60 = 1.41667: together 2.125. ln 1.5 = 0.405465, ln 1.41667 = 0.348307; of their
    // sum 0.753772 that is 0.5379 and 0.4621.
    [Fact]
    public void Doubts_PinOfTwoSources_AreItsTwoRatios()
    {
        FastenerMaterial steel = FastenerMaterial.Own("house steel", ShearClass.Soft46, StressBand.Between(
            Pressure.FromMegapascals(400), Pressure.FromMegapascals(500), Pressure.FromMegapascals(600), BandBasis.Of(Sheet)));
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(
            ShearBolt.Pin(Length.FromMillimeters(10), steel), Length.FromMillimeters(40)).WithHub(HubState.Free);
        BreakTorque torque = BreakTorque.Of(joint);
        Assert.Equal(2.125, torque.Torque.SiBand.High / torque.Torque.SiBand.Low, 12);
        Assert.Equal([DoubtCodes.Material, DoubtCodes.ShearRatio], torque.Doubts().Select(d => d.Code));
        Assert.Equal(1.5, torque.Doubts()[0].Times!.Value, 12);
        Assert.Equal(0.5379, torque.Doubts()[0].Share!.Value, 4);
        Assert.Equal(0.4621, torque.Doubts()[1].Share!.Value, 4);
        Assert.Equal(BasisKind.Given, torque.Doubts()[0].Basis!.Kind);
    }

    [Theory]
    [MemberData(nameof(Joints))]
    public void Doubts_OfAJoint_MultiplyToHighOverLow(string name)
    {
        BreakTorque torque = BreakTorque.Of(Made[name]);
        Close.Relative(
            torque.Torque.SiBand.High / torque.Torque.SiBand.Low,
            torque.Doubts().Aggregate(1.0, (all, d) => all * d.Times!.Value),
            1e-12,
            name);
        Assert.Equal(1, torque.Doubts().Sum(d => d.Share!.Value), 12);
    }

    // The second method: one source alone is put to its expected value, and the whole joint computed again.
    [Theory]
    [InlineData("graded, shank", DoubtCodes.Grade)]
    [InlineData("graded, shank", DoubtCodes.Section)]
    [InlineData("worn holes", DoubtCodes.Grade)]
    [InlineData("worn holes", DoubtCodes.HoleFit)]
    [InlineData("gap and drag", DoubtCodes.Gap)]
    [InlineData("gap and drag", DoubtCodes.Drag)]
    public void Doubt_ItsSourceKnown_NarrowsTheBandByItsTimes(string name, string code)
    {
        ShearBoltJoint joint = Made[name];
        ShearBolt bolt = joint.Bolt;
        ShearBoltJoint known = code switch
        {
            DoubtCodes.Grade => joint.With(bolt.WithMaterial(FastenerMaterial.Own(
                "tested", bolt.Material.ShearClass, StressBand.Exactly(bolt.Material.Tensile!.Expected!.Value, Sheet)))),
            DoubtCodes.Section => joint.With(bolt.WithShankDiameter(
                Length.FromMeters(bolt.Thread!.BodyDiameterOf(BodyStyle.NotKnown)!.SiBand.Expected))),
            DoubtCodes.HoleFit => joint.WithHoleFit(HoleFit.Tight),
            DoubtCodes.Gap => joint.WithStandOff(Length.Zero),
            DoubtCodes.Drag => joint.WithHubFriction(Exactly(0)).WithFlangeFriction(Exactly(0)),
            _ => throw new ArgumentOutOfRangeException(nameof(code)),
        };
        Close.Relative(
            Width(joint) / Width(known), BreakTorque.Of(joint).Doubts().Single(d => d.Code == code).Times!.Value, 1e-9, name + " " + code);
    }

    // Whichever part it is, looking narrows the band at least by so much; of the wider one exactly.
    [Theory]
    [InlineData("plane not known")]
    [InlineData("plane not known, neck told")]
    public void Plane_SeenWhichPartItIs_NarrowsTheBandAtLeastByItsTimes(string name)
    {
        ShearBoltJoint joint = Made[name];
        double times = BreakTorque.Of(joint).Doubts().Single(d => d.Code == DoubtCodes.Plane).Times!.Value;
        PlaneThrough[] parts = joint.Bolt.NeckDiameter is null ? [PlaneThrough.Shank, PlaneThrough.Thread]
            : [PlaneThrough.Shank, PlaneThrough.Thread, PlaneThrough.Neck];
        double[] narrowed = [.. parts.Select(p => Width(joint) / Width(joint.With(joint.Bolt.With(p))))];
        Assert.True(times > 1.05);
        Close.Relative(narrowed.Min(), times, 1e-9, name);
    }

    [Fact]
    public void Doubts_BoltWithoutGreatestStrength_NameWhatLeavesTheEndOpenFirst()
    {
        ScrewThread m10 = ScrewThread.Parse("M10");
        IReadOnlyList<TorqueDoubt> doubts =
            BreakTorque.Of(Circle(ShearBolt.Of(m10, FastenerMaterial.UnmarkedMetricBolt).With(PlaneThrough.Shank), 1)).Doubts();
        Assert.Equal(DoubtCodes.Material, doubts[0].Code);
        Assert.True(doubts[0].IsOpen);
        Assert.Null(doubts[0].Times);
        Assert.Null(doubts[0].Share);
        Assert.Equal(Measurements.IdentifyDevice, doubts[0].SettledBy);
        Assert.All(doubts.Skip(1), d => Assert.False(d.IsOpen));
        Assert.Equal(1, doubts.Skip(1).Sum(d => d.Share!.Value), 12);
    }

    [Fact]
    public void Doubts_HubNotKnown_IsAFactThatNobodyTold()
    {
        TorqueDoubt hub = BreakTorque.Of(Made["graded, shank"].WithHub(HubState.NotKnown)).Doubts()[0];
        Assert.Equal((DoubtCodes.Hub, true, Measurements.HubTurn), (hub.Code, hub.IsOpen, hub.SettledBy));
        Assert.Null(hub.Basis);
    }

    [Fact]
    public void Doubts_NeckNotMeasured_LeaveTheLowEndOpen() => Assert.Contains(
        BreakTorque.Of(Circle(ShearBolt.Special(ScrewThread.Parse("M10"), PlaneThrough.Neck, null, Hardness.Parse("HRC 30")), 1)).Doubts(),
        d => d is { Code: DoubtCodes.Neck, IsOpen: true, SettledBy: Measurements.NeckDiameter });

    [Fact]
    public void Doubts_SpringPin_LackAGreatestStrength() => Assert.True(
        BreakTorque.Of(Circle(ShearBolt.SpringPin(SpringPin.All[0]), 1)).Doubts()[0] is { IsOpen: true, Code: DoubtCodes.Material });

    private static double Width(ShearBoltJoint joint) => BreakTorque.Of(joint).Torque.SiBand is var band ? band.High / band.Low : 0;

    private static ShearBolt Graded(BoltGrade grade) => ShearBolt.Of(ScrewThread.Parse("M10"), grade);

    private static TorqueBand Exactly(double nm) => TorqueBand.Exactly(Torque.FromNewtonMeters(nm), Sheet);

    private static ShearBoltJoint Circle(ShearBolt bolt, int bolts) =>
        ShearBoltJoint.BoltCircle(bolt, Length.FromMillimeters(120), bolts).WithHub(HubState.Free);
}
