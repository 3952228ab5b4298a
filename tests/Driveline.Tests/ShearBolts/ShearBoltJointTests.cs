using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class ShearBoltJointTests
{
    private static readonly ShearBolt Bolt = ShearBolt.Of(ScrewThread.Parse("M10"), Iso898.Class8_8).With(PlaneThrough.Shank);

    [Theory]
    [InlineData(10)]
    [InlineData(9)]
    [InlineData(0)]
    [InlineData(-30)]
    public void ThroughShaft_NotThickerThanTheBolt_IsRefused(double mm)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(mm)));
        Assert.Contains("Shaft diameter must be", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    public void BoltCircle_CountOutOfRange_IsRefused(int bolts) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearBoltJoint.BoltCircle(Bolt, Length.FromMillimeters(100), bolts));

    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    public void WithPlanes_OutOfRange_IsRefused(int planes) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(50)).WithPlanes(planes));

    [Fact]
    public void BoltCircle_Diameter_IsTwiceTheRadius()
    {
        ShearBoltJoint joint = ShearBoltJoint.BoltCircle(Bolt, Length.FromMillimeters(100), 3);
        Assert.Equal(50, joint.Radius.Millimeters, 9);
        Assert.Equal(1, joint.PlanesPerBolt);
    }

    [Fact]
    public void WithHole_Bushed_WeakensTheShaftButIsNotLoose()
    {
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(40))
            .WithHole(Length.FromMillimeters(10.5), Length.FromMillimeters(16));
        Assert.Equal(10.5, joint.HoleDiameter!.Value.Millimeters, 9);
        Assert.DoesNotContain(BreakTorque.Of(joint).Findings, f => f.Code == ShearBoltFindings.LooseInHole);
        Assert.True(CrossHole.TryOf(
            joint.WithShaftYield(StressBand.AtLeast(Pressure.FromMegapascals(400), Basis.Given("test"))), out CrossHole? hole));
        Assert.Equal(0.4, hole!.DiameterRatio, 9);
    }

    [Theory]
    [InlineData(9.7, 9.7)]
    [InlineData(12, 11)]
    [InlineData(12, 40)]
    public void WithHole_ThinnerThanTheBoltOrAsWideAsTheShaft_IsRefused(double mm, double inShaftMm)
    {
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(40));
        Assert.Throws<ArgumentOutOfRangeException>(() => joint.WithHole(Length.FromMillimeters(mm), Length.FromMillimeters(inShaftMm)));
    }

    [Fact]
    public void With_ThickerBoltThanShaft_IsRefused()
    {
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(20));
        Assert.Throws<ArgumentOutOfRangeException>(() => joint.With(ShearBolt.Of(ScrewThread.Parse("M20"), Iso898.Class8_8)));
    }

    [Fact]
    public void WithMethods_Original_StaysAsItWas()
    {
        ShearBoltJoint joint = ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(50));
        joint.WithHub(HubState.Free).WithPlanes(2).WithHoleFit(HoleFit.Worn).WithStandOff(Length.FromMillimeters(1));
        Assert.Equal(HubState.NotKnown, joint.Hub);
        Assert.Equal(1, joint.PlanesPerBolt);
        Assert.Equal(HoleFit.NotKnown, joint.HoleFit);
        Assert.Null(joint.StandOff);
    }

    [Fact]
    public void WithStandOff_Negative_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(50)).WithStandOff(Length.FromMillimeters(-0.1)));

    [Fact]
    public void HoleBearing_ThinYoke_OvalsBeforeTheBoltShears()
    {
        // M10, wall 5 mm, 235 MPa: 1.5 × 10 × 5 × 235 = 17.6 kN a plane, below the bolt's 0.6 × 800 × 75 = 36 kN.
        StressBand mild = StressBand.Exactly(Pressure.FromMegapascals(235), Basis.Given("the case"));
        ShearBoltJoint joint = ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(60)).WithHub(HubState.Free)
            .WithYoke(Length.FromMillimeters(5), mild);
        Close.Absolute(1057.5, HoleBearing.Of(joint).Torque.Low.NewtonMeters, 0.1, "hand: 17.625 kN × 60 mm");
        Assert.Contains(BreakTorque.Of(joint).Findings, f => f.Code == ShearBoltFindings.HolesOvalFirst);
        Assert.DoesNotContain(
            BreakTorque.Of(joint.WithYoke(Length.FromMillimeters(40), mild)).Findings, f => f.Code == ShearBoltFindings.HolesOvalFirst);
    }

    [Fact]
    public void HoleBearing_InShaft_IsTheCrossPinsPressure()
    {
        StressBand mild = StressBand.Exactly(Pressure.FromMegapascals(310), Basis.Given("the case"));
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(30)).WithYoke(Length.FromMillimeters(6), mild);
        Assert.Null(HoleBearing.Of(joint).InShaft);
        Close.Absolute(
            697.5, HoleBearing.Of(joint.WithShaftYield(mild)).InShaft!.Low.NewtonMeters, 0.01, "hand: 10 × 30² mm³ × 1.5 × 310 MPa / 6");
        Close.Absolute(837, HoleBearing.Of(joint).Torque.Low.NewtonMeters, 0.01, "hand: 2 × 1.5 × 10 × 6 mm² × 310 MPa × 15 mm");
    }

    // M10 8.8 through a 30 mm shaft breaks at 1747 N·m at most: 0.72 × 1030 MPa × π/4 10² mm² = 58.2 kN a plane.
    [Theory]
    [InlineData(310, true, "hand: soft shaft, 697.5 N·m")]
    [InlineData(1100, false, "hand: hard shaft, 10 × 30² mm³ × 1.5 × 1100 MPa / 6 = 2475 N·m")]
    public void Findings_ShaftHole_OvalsOnlyWhenSoft(double mpa, bool ovals, string source)
    {
        StressBand yoke = StressBand.Exactly(Pressure.FromMegapascals(800), Basis.Given("the case"));
        StressBand shaft = StressBand.Exactly(Pressure.FromMegapascals(mpa), Basis.Given("the case"));
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(30)).WithYoke(Length.FromMillimeters(15), yoke)
            .WithShaftYield(shaft);
        Assert.True(ovals == BreakTorque.Of(joint).Findings.Any(f => f.Code == ShearBoltFindings.HolesOvalFirst), source);
    }

    [Fact]
    public void HoleBearing_YokeNotTold_IsRefused()
    {
        ShearBoltJoint joint = ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(60));
        Assert.False(HoleBearing.TryOf(joint, out _));
        Assert.Throws<ArgumentException>(() => HoleBearing.Of(joint));
    }

    [Fact]
    public void CrossHole_FourTenths_LeavesAboutAThird()
    {
        StressBand yield = StressBand.Exactly(Pressure.FromMegapascals(310), Basis.Given("the case"));
        CrossHole hole = CrossHole.Of(Length.FromMillimeters(30), Length.FromMillimeters(12), yield);

        // 1 − 8 · 0.4/(3 π) = 0.66047; × √3/4 = 0.28599. Gross first yield 5301.4 mm³ × 178.98 MPa = 948.8 N·m.
        Close.Absolute(0.28599, hole.ElasticShare, 1e-5, "hand: (1 − 0.33953) × 0.43301");
        Close.Absolute(271.4, hole.Torque.Low.NewtonMeters, 0.1, "hand: 948.8 × 0.28599");
        Close.Absolute(626.7, hole.Torque.Expected!.Value.NewtonMeters, 0.1, "hand: 948.8 × 0.66047");

        // π/12 · 27000 − 12 · 900/4 = 7068.6 − 2700 = 4368.6 mm³ × 178.98 MPa.
        Close.Absolute(781.9, hole.Torque.High!.Value.NewtonMeters, 0.1, "hand: full yield of the rest");
        Close.Absolute(948.8, hole.WithoutHole.Low.NewtonMeters, 0.1, "hand: π 30³/16 × 310/√3");
    }

    [Theory]
    [InlineData(15, true)]
    [InlineData(15.1, false)]
    public void CrossHole_AroundHalfTheShaft_AcceptsUpToIt(double mm, bool accepted)
    {
        StressBand yield = StressBand.Exactly(Pressure.FromMegapascals(310), Basis.Given("the case"));
        Exception? error = Record.Exception(() => CrossHole.Of(Length.FromMillimeters(30), Length.FromMillimeters(mm), yield));
        Assert.Equal(accepted, error is null);
    }

    [Theory]
    [InlineData(20, ShearBoltFindings.CrossHoleWeakensShaft)]
    [InlineData(19.9, ShearBoltFindings.CrossHoleTooLarge)]
    public void ThroughShaft_BoltAroundHalfTheShaft_SaysWhich(double shaftMm, string code)
    {
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(shaftMm))
            .WithShaftYield(StressBand.Exactly(Pressure.FromMegapascals(310), Basis.Given("the case")));
        Assert.Contains(BreakTorque.Of(joint).Findings, f => f.Code == code);
        Assert.Equal(code == ShearBoltFindings.CrossHoleWeakensShaft, CrossHole.TryOf(joint, out _));
    }

    [Fact]
    public void CrossHole_ShaftSteelNotTold_IsAbsent() =>
        Assert.False(CrossHole.TryOf(ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(30)), out _));

    [Fact]
    public void Findings_Severities_HubNotFreeIsAWarningAtLeast() => Assert.All(
        BreakTorque.Of(ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(60))).Findings.Where(
            f => f.Code == ShearBoltFindings.HubFreedomNotKnown),
        f => Assert.Equal(Severity.Warning, f.Severity));
}
