using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>The torque at which holes begin to oval, each end. M10, wall 5 mm, 60 mm radius unless told otherwise.</summary>
public class HoleBearingTests
{
    private static readonly ShearBolt Bolt = ShearBolt.Of(ScrewThread.Parse("M10"), Iso898.Class8_8).With(PlaneThrough.Shank);

    private static readonly StressBand Yield = StressBand.Between(
        Pressure.FromMegapascals(200), Pressure.FromMegapascals(240), Pressure.FromMegapascals(300), Basis.Given("the case"));

    // A plane: 1.5 · 10 · 5 mm² times 200, 240, 300 MPa = 15, 18, 22.5 kN; at 60 mm 900, 1080, 1350 N·m.
    [Theory]
    [InlineData(1, HoleFit.Worn, 900, 1080, 1350, "one bolt")]
    [InlineData(1, HoleFit.Tight, 900, 1080, 1350, "one bolt")]
    [InlineData(4, HoleFit.Tight, 3600, 4320, 5400, "four times each end")]
    [InlineData(4, HoleFit.Worn, 900, 2700, 5400, "one bolt at least, (1 + 4)/2 expected, all four at most")]
    [InlineData(4, HoleFit.NotKnown, 900, 2700, 5400, "as worn")]
    public void Torque_BoltsThatShare_CountByTheFitOfTheHoles(
        int bolts, HoleFit fit, double low, double expected, double high, string working)
    {
        HoleBearing bearing = HoleBearing.Of(ShearBoltJoint.BoltCircle(Bolt, Length.FromMillimeters(120), bolts)
            .WithHoleFit(fit).WithYoke(Length.FromMillimeters(5), Yield));
        Near(low, expected, high, bearing.Torque.SiBand, working);
        Assert.Null(bearing.InShaft);
        Assert.Equal(bearing.Torque.SiBand.Low, bearing.FirstOvalNm);
    }

    // Shaft of 30 mm: 10 · 30² · 1.5/6 mm³ = 2250 mm³ times 200, 240, 300 MPa = 450, 540, 675 N·m, before the yoke:
    // 2 planes of 15 kN at 15 mm = 450 N·m with a wall of 5 mm, 900 with one of 10.
    [Fact]
    public void InShaft_Bands_AreWorkedEndByEnd()
    {
        HoleBearing bearing = HoleBearing.Of(ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(30)).WithShaftYield(Yield)
            .WithYoke(Length.FromMillimeters(10), Yield));
        Near(450, 540, 675, bearing.InShaft!.SiBand, "2250 mm³ of pressure");
        Near(900, 1080, 1350, bearing.Torque.SiBand, "2 · 1.5 · 10 · 10 mm² at 15 mm");
        Close.Relative(450, bearing.FirstOvalNm, 1e-12, "the shaft first");
    }

    [Fact]
    public void FirstOval_HardShaft_IsTheYokes()
    {
        StressBand hard = StressBand.Exactly(Pressure.FromMegapascals(900), Basis.Given("the case"));
        HoleBearing bearing = HoleBearing.Of(ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(30)).WithShaftYield(hard)
            .WithYoke(Length.FromMillimeters(5), Yield));
        Close.Relative(450, bearing.FirstOvalNm, 1e-12, "2 · 15 kN · 15 mm, below 2250 mm³ · 900 MPa = 2025 N·m");
    }

    // The yield of a shaft that no bolt crosses says nothing of the holes.
    [Fact]
    public void InShaft_BoltBesideTheShaft_IsNone() => Assert.Null(HoleBearing.Of(
        ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(60)).WithShaftYield(Yield).WithYoke(Length.FromMillimeters(5), Yield))
        .InShaft);

    [Fact]
    public void TryOf_Joint_KeepsIt()
    {
        ShearBoltJoint joint = ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(60)).WithYoke(Length.FromMillimeters(5), Yield);
        Assert.True(HoleBearing.TryOf(joint, out HoleBearing? bearing));
        Assert.Same(joint, bearing.Joint);
        Assert.False(HoleBearing.TryOf(ShearBoltJoint.Tangential(Bolt, Length.FromMillimeters(60)), out HoleBearing? none));
        Assert.Null(none);
    }

    // Formula and clause are printed, the yield is given.
    [Fact]
    public void Basis_OfEach_IsTheWeakestUsed()
    {
        HoleBearing bearing = HoleBearing.Of(ShearBoltJoint.ThroughShaft(Bolt, Length.FromMillimeters(30)).WithShaftYield(Yield)
            .WithYoke(Length.FromMillimeters(5), Yield));
        Assert.Equal(BasisKind.Given, bearing.InShaft!.WeakestBasis.Kind);
        Assert.Equal(BasisKind.Given, bearing.Torque.WeakestBasis.Kind);
    }

    [Fact]
    public void NewtonMeters_Recorded_IsOneLine()
    {
        StepList log = StepList.New();
        Close.Relative(1800, HoleBearing.NewtonMeters(2, 0.010, 0.005, 200e6, 0.060, ref log), 1e-12, "2 · 15 kN · 60 mm");
        CalculationLine line = Assert.Single(log.Lines);
        Assert.Equal("holeYieldTorque", line.Formula.Code);
        Close.Relative(1800, line.Value, 1e-12, "2 · 15 kN · 60 mm");
    }

    private static void Near(double low, double expected, double high, Band actual, string working)
    {
        Close.Relative(low, actual.Low, 1e-12, working);
        Close.Relative(expected, actual.Expected, 1e-12, working);
        Close.Relative(high, actual.High, 1e-12, working);
    }
}
