using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class BreakTorqueTests
{
    private static readonly ScrewThread Half = ScrewThread.Parse("1/2-13 UNC");

    private static readonly ShearBolt Grade2 = ShearBolt.Of(Half, SaeJ429.Grade2).With(PlaneThrough.Shank).WithBody(BodyStyle.HexCapScrew);

    private static readonly ShearBoltJoint Shaft = ShearBoltJoint.ThroughShaft(Grade2, Length.FromInches(1.25)).WithHub(HubState.Free);

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
    [InlineData(HubState.NotKnown, ShearBoltFindings.HubFreedomNotKnown)]
    [InlineData(HubState.Stiff, ShearBoltFindings.HubStiff)]
    [InlineData(HubState.Seized, ShearBoltFindings.HubSeized)]
    public void Hub_NotFree_HasNoHighEndAndSaysSo(HubState hub, string code)
    {
        BreakTorque trip = BreakTorque.Of(Shaft.WithHub(hub));
        Assert.Null(trip.Torque.High);
        Assert.Equal(BreakTorque.Of(Shaft).Torque, trip.IfHubFree);
        Assert.Contains(trip.Findings, f => f.Code == code);
    }

    [Theory]
    [InlineData(HubState.Stiff, 80)]
    [InlineData(HubState.Free, 80)]
    [InlineData(HubState.NotKnown, 80)]
    public void Hub_DragMeasured_AddsToHighOnly(HubState hub, double nm)
    {
        var drag = TorqueBand.Exactly(Torque.FromNewtonMeters(nm), Basis.Given("measured"));
        Band free = BreakTorque.Of(Shaft).Torque.SiBand;
        Band stiff = BreakTorque.Of(Shaft.WithHub(hub).WithHubFriction(drag)).Torque.SiBand;
        Close.Absolute(free.High + nm, stiff.High, 1e-9, "hand: high + 80 N·m");
        Assert.Equal(free.Low, stiff.Low);
        Assert.Equal(free.Expected, stiff.Expected);
    }

    [Fact]
    public void Hub_SeizedWithADragMeasured_StaysUnbounded() => Assert.Null(
        BreakTorque.Of(Shaft.WithHub(HubState.Seized)
            .WithHubFriction(TorqueBand.Exactly(Torque.FromNewtonMeters(80), Basis.Given("measured")))).Torque.High);

    [Fact]
    public void FlangeFriction_Stated_AddsToHighOnly()
    {
        var friction = TorqueBand.Between(
            Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(50), Torque.FromNewtonMeters(120), Basis.Given("the case"));
        Band plain = BreakTorque.Of(Shaft).Torque.SiBand;
        Band clamped = BreakTorque.Of(Shaft.WithFlangeFriction(friction)).Torque.SiBand;
        Assert.Equal(new Band(plain.Low, plain.Expected, plain.High + 120), clamped);
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

    [Fact]
    public void PlaneNotKnown_Band_SpansThreadAndShank()
    {
        ShearBolt unknown = ShearBolt.Of(Half, SaeJ429.Grade5);
        Band thread = ShearPlane.Of(unknown.With(PlaneThrough.Thread)).Load.SiBand;
        Band shank = ShearPlane.Of(unknown.With(PlaneThrough.Shank)).Load.SiBand;
        Band both = ShearPlane.Of(unknown).Load.SiBand;
        Assert.Equal(thread.Low, both.Low);
        Assert.Equal(shank.High, both.High);
        Close.Relative((thread.Expected + shank.Expected) / 2, both.Expected, 1e-12, "midway");
        Assert.Contains(BreakTorque.Of(ShearBoltJoint.Tangential(unknown, Length.FromMillimeters(60))).Findings,
            f => f.Code == ShearBoltFindings.PlaneNotKnown);
    }

    [Fact]
    public void ThreadInPlane_M12Class88_WorkedEnds()
    {
        // d3 = 12 − 1.22687 × 1.75 = 9.853 mm, 76.25 mm²; A_s = 84.3 mm²; R_m 800 to 1030 MPa (HV 320), 915 midway;
        // 1.08 × 84.3 = 91.0 mm²; 1.16 × 84.3 = 97.8 mm² and 0.89 × π/4 12² = 100.66 mm², the larger.
        Band load = ShearPlane.Of(ShearBolt.Of(ScrewThread.Parse("M12"), Iso898.Class8_8).With(PlaneThrough.Thread)).Load.SiBand;
        Close.Relative(0.60 * 800e6 * 76.25e-6, load.Low, 1e-3, "hand: 0.60 × 800 MPa × 76.25 mm² = 36.6 kN");
        Close.Relative(0.65 * 915e6 * 91.0e-6, load.Expected, 5e-3, "hand: 0.65 × 915 MPa × 91.0 mm² = 54.1 kN");
        Close.Relative(0.72 * 1030e6 * 100.66e-6, load.High, 5e-3, "hand: 0.72 × 1030 MPa × 100.66 mm² = 74.6 kN");
    }

    [Fact]
    public void ThreadInPlane_ThreeEighthsGrade5_CarriesWhatTestsShow()
    {
        // A_s = 0.0775 in² = 50.0 mm², shank 71.26 mm². Expected R_m 943 MPa, high 1047 MPa (see the tensile band of SAE 5).
        // Expected 0.65 × 943 × 1.08 × 50.0 = 33.1 kN; high 0.72 × 1047 × 0.89 × 71.26 = 47.8 kN. Code-like nominal 0.45 × 120 ksi × 71.26
        // = 26.5 kN.
        Band load = ShearPlane.Of(ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Thread)).Load.SiBand;
        Close.Relative(33.1e3, load.Expected, 0.005, "hand");
        Close.Relative(47.8e3, load.High, 0.005, "hand");
        Assert.True(load.Low < 26.5e3 && load.Expected > 26.5e3, load.ToString());
    }

    [Theory]
    [InlineData("1/2-13 UNC", true)]
    [InlineData("M14", true)]
    [InlineData("5/8-11 UNC", false)]
    [InlineData("M16", false)]
    public void ThreadInPlane_BelowFiveEighths_SaysExtrapolated(string size, bool extrapolated)
    {
        ScrewThread thread = ScrewThread.Parse(size);
        ShearBolt bolt = ShearBolt.Of(thread, thread.System == ThreadSystem.Inch ? SaeJ429.Grade5 : Iso898.Class8_8);
        foreach (PlaneThrough plane in new[] { PlaneThrough.Thread, PlaneThrough.Shank })
        {
            IReadOnlyList<Finding> findings = BreakTorque.Of(
                ShearBoltJoint.Tangential(bolt.With(plane), Length.FromMillimeters(60))).Findings;
            Assert.Equal(
                extrapolated && plane == PlaneThrough.Thread, findings.Any(f => f.Code == ShearBoltFindings.ThreadShareExtrapolated));
        }
    }

    [Fact]
    public void Unmarked_Bolt_HasNoHighEndAndIsADanger()
    {
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.ThroughShaft(ShearBolt.Of(Half, FastenerMaterial.UnmarkedInchBolt).With(PlaneThrough.Shank),
                Length.FromInches(1.25)).WithHub(HubState.Free));
        Assert.Null(trip.Torque.High);
        Assert.True(trip.Torque.Low.NewtonMeters > 0);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.BoltNotIdentified && f.Severity == Severity.Danger);
    }

    [Fact]
    public void MaterialNotKnown_Joint_IsNotKnown()
    {
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.ThroughShaft(ShearBolt.Of(Half, FastenerMaterial.NotKnown), Length.FromInches(1.25)).WithHub(HubState.Free));
        Assert.False(trip.IsKnown);
        Assert.Equal(0, trip.Torque.Low.NewtonMeters);
        Assert.Null(trip.Torque.Expected);
    }

    [Fact]
    public void StainlessBolt_NoMaximum_SaysSo()
    {
        BreakTorque trip = BreakTorque.Of(ShearBoltJoint.Tangential(
            ShearBolt.Of(ScrewThread.Parse("M10"), BoltGrade.Parse("A2-70")).With(PlaneThrough.Shank), Length.FromMillimeters(60))
                .WithHub(HubState.Free));
        Assert.Null(trip.Torque.High);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.NoAssuredMaximum);
    }

    [Fact]
    public void SpringPin_ThroughShaft_LowIsThePublishedLoadAndNothingElseIsKnown()
    {
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.ThroughShaft(ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm")), Length.FromMillimeters(30))
                .WithHub(HubState.Free));
        double published = SpringPin.Parse("ISO 8752 8 mm").PublishedLoad.Value;
        Close.Relative(published * 1000 * 0.015, trip.Torque.Low.NewtonMeters, 1e-9, "ISO 8752: double-shear load × 15 mm");
        Assert.Null(trip.Torque.Expected);
        Assert.Null(trip.Torque.High);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.SpringPinNoMaximum);
    }

    [Fact]
    public void Sheet_Replay_EndsWithTheBand()
    {
        BreakTorque trip = BreakTorque.Of(Shaft);
        double[] torques = [.. trip.Sheet().Where(l => l.Formula.Code == "breakTorque").Select(l => l.Value)];
        Assert.Equal([trip.Torque.SiBand.Low, trip.Torque.SiBand.Expected, trip.Torque.SiBand.High], torques);
    }

    [Fact]
    public void Sheet_GapAndDrag_CloseTheirEnds()
    {
        var drag = TorqueBand.Exactly(Torque.FromNewtonMeters(80), Basis.Given("measured"));
        BreakTorque trip = BreakTorque.Of(
            Shaft.WithStandOff(Length.FromMillimeters(3)).WithFlangeFriction(drag).WithHub(HubState.Stiff).WithHubFriction(drag));
        IReadOnlyList<CalculationLine> lines = trip.Sheet();
        Assert.Equal(trip.Torque.SiBand.Low, Assert.Single(lines, l => l.Formula.Code == "breakTorqueBent").Value);
        Assert.Equal(2, lines.Count(l => l.Formula.Code == "frictionTorque"));
        Assert.Equal("breakTorqueWithFriction", lines[^1].Formula.Code);
        Assert.Equal(trip.Torque.SiBand.High, lines[^1].Value);
    }

    [Fact]
    public void Sheet_HubSeized_StopsAtTheBolt()
    {
        IReadOnlyList<CalculationLine> lines = BreakTorque.Of(Shaft.WithHub(HubState.Seized)).Sheet();
        Assert.DoesNotContain(lines, l => double.IsInfinity(l.Value));
        Assert.Equal("breakTorque", lines[^1].Formula.Code);
    }

    [Fact]
    public void NewtonMeters_SpansOfAnyLength_AreTheBitsOfTheKernel()
    {
        NoSteps none = default;
        for (int length = 0; length <= 20; length++)
        {
            double[] area = [.. Enumerable.Range(1, length).Select(k => 1e-5 / k)];
            double[] tau = [.. Enumerable.Range(1, length).Select(k => 3e8 + (1e6 / k))];
            double[] radius = [.. Enumerable.Range(1, length).Select(k => 0.05 / (k + 0.3))];
            double[] torque = new double[length];
            BreakTorque.NewtonMeters(3, area, tau, radius, torque);
            for (int k = 0; k < length; k++)
            {
                Assert.Equal(BreakTorque.NewtonMeters(3, area[k], tau[k], radius[k], ref none), torque[k]);
            }
        }
    }

    [Fact]
    public void Batch_ManyJoints_AllocatesNothing()
    {
        double[] area = new double[1000], tau = new double[1000], radius = new double[1000], torque = new double[1000];
        Array.Fill(area, 5e-5);
        Array.Fill(tau, 3e8);
        Array.Fill(radius, 0.06);
        BreakTorque.NewtonMeters(2, area, tau, radius, torque);
        long before = GC.GetAllocatedBytesForCurrentThread();
        BreakTorque.NewtonMeters(2, area, tau, radius, torque);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.All(torque, nm => Close.Absolute(1800, nm, 1e-9, "hand: 2 × 50 mm² × 300 MPa × 60 mm"));
    }

    [Fact]
    public void Batch_SpansOfDifferentLength_AreRefused()
    {
        var error = Assert.Throws<ArgumentException>(
            () => BreakTorque.NewtonMeters(1, new double[2], new double[2], new double[3], new double[2]));
        Assert.Contains("got 2, 2, 3 and 2", error.Message, StringComparison.Ordinal);
    }
}
