using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class BreakTorqueTests
{
    private static readonly ScrewThread Half = ScrewThread.Parse("1/2-13 UNC");

    private static readonly ShearBolt Grade2 = ShearBolt.Of(Half, SaeJ429.Grade2).With(PlaneThrough.Shank).WithBody(BodyStyle.HexCapScrew);

    internal static readonly ShearBoltJoint Shaft = ShearBoltJoint.ThroughShaft(Grade2, Length.FromInches(1.25)).WithHub(HubState.Free);

    [Theory]
    [InlineData(2, 50, 300, 60, 1800, 0.5, "hand: 2 × 50 mm² × 300 MPa × 60 mm")]
    [InlineData(1, 50, 300, 60, 900, 0.5, "hand: half of it in single shear")]
    public void NewtonMeters_WorkedCase_Matches(
        int planes, double mm2, double mpa, double mm, double expectedNm, double toleranceNm, string source)
    {
        NoSteps none = default;
        Close.Absolute(expectedNm, BreakTorque.NewtonMeters(planes, mm2 * 1e-6, mpa * 1e6, mm / 1000, ref none), toleranceNm, source);
        double[] batch = new double[1];
        BreakTorque.NewtonMeters(planes, [mm2 * 1e-6], [mpa * 1e6], [mm / 1000], batch);
        Close.Absolute(expectedNm, batch[0], toleranceNm, source);
    }

    [Fact]
    public void Of_HalfInchGrade2ThroughShaft_WorkedLow()
    {
        // 74 ksi = 510.21 MPa; body at least 0.493 in = 123.15 mm²; 0.60 × 510.21 × 123.15 = 37.70 kN a plane; 2 × 37.70 kN × 15.875 mm.
        BreakTorque trip = BreakTorque.Of(Shaft);
        Close.Absolute(37700, ShearPlane.Of(Grade2).Load.Low.Newtons, 10, "hand: 0.60 × 74 ksi × π/4 0.493² in²");
        Close.Absolute(1197, trip.Torque.Low.NewtonMeters, 0.5, "hand: 2 × 37.70 kN × 15.875 mm");

        // HRB 100 is 800 MPa; 0.85 × 800 × π/4 × 12.7² mm² = 86.14 kN.
        Close.Relative(
            2 * 86.14e3 * 0.015875, trip.Torque.High!.Value.NewtonMeters, 0.005, "hand: 2 × 0.85 × 800 MPa × 126.68 mm² × 15.875 mm");
        Assert.True(trip.IsKnown);
        Assert.Equal(trip.IfHubFree, trip.Torque);
    }

    [Fact]
    public void Of_SoftGrade_ScattersByMoreThanTwo()
    {
        Band soft = BreakTorque.Of(Shaft).Torque.SiBand;
        Band hard = BreakTorque.Of(
            Shaft.With(ShearBolt.Of(Half, SaeJ429.Grade8).With(PlaneThrough.Shank).WithBody(BodyStyle.HexCapScrew))).Torque.SiBand;
        Assert.True(soft.High / soft.Low > 2, soft.ToString());
        Assert.True(hard.High / hard.Low < 1.5, hard.ToString());
    }

    [Theory]
    [InlineData(HoleFit.Tight, 4, null)]
    [InlineData(HoleFit.Worn, 1, ShearBoltFindings.HolesWorn)]
    [InlineData(HoleFit.NotKnown, 1, ShearBoltFindings.HoleFitNotKnown)]
    public void BoltCircle_FourBolts_LowCountsThoseThatShare(HoleFit fit, int sharing, string? code)
    {
        ShearBoltJoint one = ShearBoltJoint.BoltCircle(Grade2, Length.FromMillimeters(120), 1).WithHub(HubState.Free);
        Band single = BreakTorque.Of(one).Torque.SiBand;
        BreakTorque four = BreakTorque.Of(
            ShearBoltJoint.BoltCircle(Grade2, Length.FromMillimeters(120), 4).WithHub(HubState.Free).WithHoleFit(fit));
        Close.Relative(sharing * single.Low, four.Torque.SiBand.Low, 1e-12, "bolts that share × one bolt");
        Close.Relative(4 * single.High, four.Torque.SiBand.High, 1e-12, "all four together");
        Close.Relative((sharing + 4) / 2.0 * single.Expected, four.Torque.SiBand.Expected, 1e-12, "midway");
        Assert.Equal(code is not null, four.Findings.Any(f => f.Code == code));
    }

    [Fact]
    public void StandOff_OneDiameter_LowersOnlyTheLow()
    {
        Band together = BreakTorque.Of(Shaft).Torque.SiBand;
        Band apart = BreakTorque.Of(Shaft.WithStandOff(Length.FromInches(0.493))).Torque.SiBand;

        // F_R / M_R · c = 8 · 0.6 / (1.5 · 0.6) = 5.333 at c = d; 1/√(1 + 5.333²) = 0.18429.
        Close.Relative(0.18429, apart.Low / together.Low, 1e-4, "hand: EN 1993-1-8 3.13 at a gap of one diameter");
        Assert.Equal(together.Expected, apart.Expected);
        Assert.Equal(together.High, apart.High);
    }
}
