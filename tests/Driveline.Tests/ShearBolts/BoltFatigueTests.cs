using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class BoltFatigueTests
{
    // Pin of 10 mm: 78.54 mm². At 50 mm one plane carries T/(78.54 mm² · 50 mm).
    private static readonly ShearBoltJoint Joint = ShearBoltJoint.Tangential(
        ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Neck).WithNeckDiameter(Length.FromMillimeters(10)),
            Length.FromMillimeters(50));

    [Theory]
    [InlineData(785.398, 62500, "hand: 785.4 N·m / (78.54 mm² × 50 mm) = 200 MPa; 2e6 / 32")]
    [InlineData(1178.097, 8230.45, "hand: 300 MPa; 2e6 / 243")]
    public void LowerBoundLife_BelowShearYield_IsTheCurve(double nm, double cycles, string source)
    {
        BoltFatigue life = BoltFatigue.LowerBoundLife(Joint, Torque.FromNewtonMeters(nm), 40);
        Close.Relative(cycles, life.Cycles!.Value, 1e-4, source);
        Close.Relative(cycles / 40, life.Hours!.Value, 1e-4, source);
        Assert.Equal(BasisKind.FromMemory, life.Basis.Kind);
    }

    // 0.75 × 800 MPa / √3 = 346.41 MPa; × 78.54 mm² × 50 mm = 1360.3 N·m.
    [Theory]
    [InlineData(1360.2, true)]
    [InlineData(1360.5, false)]
    public void LowerBoundLife_AroundShearYield_AppliesOnlyBelow(double nm, bool applies)
    {
        BoltFatigue life = BoltFatigue.LowerBoundLife(Joint, Torque.FromNewtonMeters(nm), 40);
        Assert.Equal(applies, life.Cycles is not null);
        Assert.Equal(!applies, life.Findings.Any(f => f.Code == ShearBoltFindings.YieldsAtEachPeak));
    }

    [Fact]
    public void LowerBoundLife_BelowTheCutOff_IsEndless()
    {
        // 45 MPa × 78.54 mm² × 50 mm = 176.7 N·m.
        BoltFatigue life = BoltFatigue.LowerBoundLife(Joint, Torque.FromNewtonMeters(176.7), 40);
        Assert.True(double.IsPositiveInfinity(life.Hours!.Value));
    }

    [Fact]
    public void LowerBoundLife_ThreadInPlane_UsesTheRootAndSaysSo()
    {
        ShearBoltJoint threaded = ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Thread), Length.FromMillimeters(50));
        BoltFatigue life = BoltFatigue.LowerBoundLife(threaded, Torque.FromNewtonMeters(500), 40);
        Close.Relative(131.15, life.Range.Megapascals, 1e-3, "hand: 500 N·m / (76.25 mm² × 50 mm)");
        Assert.Contains(life.Findings, f => f.Code == ShearBoltFindings.FatigueThreadsInPlane);
    }

    [Fact]
    public void LowerBoundLife_MaterialNotKnown_GivesNone()
    {
        ShearBoltJoint unknown = ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse("M12"), FastenerMaterial.NotKnown), Length.FromMillimeters(50));
        Assert.Null(BoltFatigue.LowerBoundLife(unknown, Torque.FromNewtonMeters(100), 40).Hours);
    }

    [Theory]
    [InlineData(-1, 40)]
    [InlineData(100, -1)]
    public void LowerBoundLife_Negative_IsRefused(double nm, double rate) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltFatigue.LowerBoundLife(Joint, Torque.FromNewtonMeters(nm), rate));
}
