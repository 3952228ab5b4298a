using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>Every line of the sheet, each at its end, with its value; and where the numbers come from.</summary>
public class BreakTorqueEndsTests
{
    private static readonly string[] OneEnd =
        ["shearRatio", "tensileStrength", "shearStrength", "planesThatCarry", "shearArea", "radius", "breakTorque"];

    private static readonly ShearBolt Grade2 =
        ShearBolt.Of(ScrewThread.Parse("1/2-13 UNC"), SaeJ429.Grade2).With(PlaneThrough.Shank).WithBody(BodyStyle.HexCapScrew);

    private static readonly ShearBoltJoint Shaft = ShearBoltJoint.ThroughShaft(Grade2, Length.FromInches(1.25)).WithHub(HubState.Free);

    private static readonly TorqueBand Rust = TorqueBand.Exactly(Torque.FromNewtonMeters(80), Basis.FromMemory("rust"));

    [Fact]
    public void Sheet_WithoutGapOrDrag_HasSevenLinesAnEnd()
    {
        IReadOnlyList<CalculationLine> lines = BreakTorque.Of(Shaft).Sheet();
        Assert.Equal([.. OneEnd, .. OneEnd, .. OneEnd], lines.Select(l => l.Formula.Code));
        Assert.Equal(
            [.. Enumerable.Repeat(SheetEnd.Lowest, 7), .. Enumerable.Repeat(SheetEnd.MostLikely, 7),
                .. Enumerable.Repeat(SheetEnd.Highest, 7)],
            lines.Select(l => l.End));
    }

    [Fact]
    public void Sheet_LowEnd_HasTheValuesWorkedByHand()
    {
        // 0.60 of 74 ksi = 510.21 MPa is 306.13 MPa; 2 planes of π/4 · 12.5222² = 123.154 mm² at 15.875 mm.
        double[] values = [.. BreakTorque.Of(Shaft).Sheet().Take(7).Select(l => l.Value)];
        Close.Relative(0.60, values[0], 1e-12, "EN 1993-1-8 Table 3.4, shank");
        Close.Relative(510.212e6, values[1], 1e-5, "74 ksi · 6.894757 MPa");
        Close.Relative(306.127e6, values[2], 1e-5, "0.60 · 510.212 MPa");
        Assert.Equal(2, values[3]);
        Close.Relative(123.154e-6, values[4], 1e-5, "π/4 · (0.493 · 25.4 mm)²");
        Close.Relative(0.015875, values[5], 1e-12, "half of 1 1/4 in");
        Close.Relative(1197.0, values[6], 1e-4, "2 · 123.154 mm² · 306.127 MPa · 15.875 mm");
    }

    [Fact]
    public void Sheet_GapAndBothDrags_StandAtTheEndTheyBelongTo()
    {
        IReadOnlyList<CalculationLine> lines = BreakTorque.Of(
            Shaft.WithStandOff(Length.FromMillimeters(3)).WithFlangeFriction(Rust).WithHub(HubState.Stiff).WithHubFriction(Rust)).Sheet();
        Assert.Equal(
            [.. OneEnd, "standOffFactor", "breakTorqueBent", .. OneEnd, .. OneEnd, "frictionTorque", "breakTorqueWithFriction",
                "frictionTorque", "breakTorqueWithFriction"],
            lines.Select(l => l.Formula.Code));
        double high = BreakTorque.Of(Shaft).Torque.SiBand.High;
        Assert.Equal([80, high + 80, 80, high + 160], lines.TakeLast(4).Select(l => l.Value));
        Assert.Equal([SheetEnd.Lowest, SheetEnd.Lowest], lines.Skip(7).Take(2).Select(l => l.End));
    }

    // A stainless bolt has no high end: the drag of a flange has nothing to stand upon.
    [Fact]
    public void Sheet_NoHighEnd_HasNoDragEither()
    {
        ShearBolt stainless = ShearBolt.Of(ScrewThread.Parse("M10"), BoltGrade.Parse("A2-70")).With(PlaneThrough.Shank);
        BreakTorque trip = BreakTorque.Of(
            ShearBoltJoint.Tangential(stainless, Length.FromMillimeters(60)).WithHub(HubState.Free).WithFlangeFriction(Rust));
        Assert.True(trip.IsKnown);
        Assert.DoesNotContain(trip.Sheet(), l => l.End == SheetEnd.Highest);
    }

    [Fact]
    public void IsKnown_LeastTorqueWithoutAHighEnd_IsTrue() => Assert.True(
        BreakTorque.Of(ShearBoltJoint.ThroughShaft(ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm")), Length.FromMillimeters(30)))
            .IsKnown);

    // A neck of unknown width holds nothing for certain, but no more than the whole shank: bounded, and so known.
    [Fact]
    public void IsKnown_GreatestTorqueAlone_IsTrue()
    {
        BreakTorque trip = BreakTorque.Of(ShearBoltJoint.Tangential(Grade2.With(PlaneThrough.Neck), Length.FromMillimeters(60)));
        Assert.Equal(0, trip.IfHubFree.Low.NewtonMeters);
        Assert.NotNull(trip.IfHubFree.High);
        Assert.True(trip.IsKnown);
    }

    [Fact]
    public void Basis_FlangeFriction_WeakensTheHighEndAlone()
    {
        BandBasis plain = BreakTorque.Of(Shaft).IfHubFree.Basis;
        BandBasis rusty = BreakTorque.Of(Shaft.WithFlangeFriction(Rust)).IfHubFree.Basis;
        Assert.Equal(plain.Low, rusty.Low);
        Assert.Equal(plain.Expected, rusty.Expected);
        Assert.NotEqual("rust", plain.High.Document);
        Assert.Equal("rust", rusty.High.Document);
        Assert.Equal(plain.LowEnd, rusty.LowEnd);
        Assert.Equal(BandEnd.Interval95, rusty.HighEnd);   // of the ratio's interval and the stated drag's limit, the wider
    }

    // A spring pin's load is a limit; a drag that is an interval makes the sum one.
    [Fact]
    public void Basis_DragAsAnInterval_MakesTheHighEndOne()
    {
        Basis guess = Basis.Given("felt by hand");
        var drag = TorqueBand.OfSi(Band.Exactly(20), new BandBasis(guess, guess, guess, BandEnd.Interval95, BandEnd.Interval95));
        ShearBoltJoint pin = ShearBoltJoint.ThroughShaft(ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm")), Length.FromMillimeters(30))
            .WithHub(HubState.Free);
        Assert.Equal(BandEnd.Limit, BreakTorque.Of(pin).Torque.Basis.HighEnd);
        BandBasis dragging = BreakTorque.Of(pin.WithHubFriction(drag)).Torque.Basis;
        Assert.Equal(BandEnd.Interval95, dragging.HighEnd);
        Assert.Equal(BandEnd.Limit, dragging.LowEnd);
    }

    [Theory]
    [InlineData(4, HoleFit.Worn, true)]
    [InlineData(4, HoleFit.NotKnown, true)]
    [InlineData(4, HoleFit.Tight, false)]
    [InlineData(1, HoleFit.Worn, false)]
    public void Basis_SeveralBoltsInWornHoles_ExpectedIsFromMemory(int bolts, HoleFit fit, bool remembered)
    {
        BandBasis basis = BreakTorque.Of(
            ShearBoltJoint.BoltCircle(Grade2, Length.FromMillimeters(120), bolts).WithHub(HubState.Free).WithHoleFit(fit)).Torque.Basis;
        Assert.Equal(remembered, basis.Expected.Kind == BasisKind.FromMemory);
        Assert.NotEqual(BasisKind.FromMemory, basis.Low.Kind);
    }

    [Fact]
    public void Torque_HubDragAtAnotherRadius_IsAddedOnce()
    {
        BreakTorque trip = BreakTorque.Of(Shaft.WithHub(HubState.Stiff).WithHubFriction(Rust));
        Band free = BreakTorque.Of(Shaft).Torque.SiBand;
        Close.Relative((2 * free.High) + 80, trip.AtRadiusNm(0.03175).High, 1e-12, "twice the radius, and 80 N·m of drag");
        Close.Relative(2 * free.Low, trip.AtRadiusNm(0.03175).Low, 1e-12, "twice the radius");
        Assert.Equal(80, trip.DragNm);
    }

    [Fact]
    public void NewtonMeters_NoPlane_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => BreakTorque.NewtonMeters(0, new double[1], new double[1], new double[1], new double[1]));

    [Theory]
    [InlineData(3, 2, 2)]
    [InlineData(2, 3, 2)]
    [InlineData(2, 2, 3)]
    public void NewtonMeters_OneSpanLonger_IsRefused(int areas, int strengths, int radii) => Assert.Throws<ArgumentException>(
        () => BreakTorque.NewtonMeters(1, new double[areas], new double[strengths], new double[radii], new double[2]));

    [Fact]
    public void ToString_Torque_IsTheBands() => Assert.Equal(BreakTorque.Of(Shaft).Torque.ToString(), BreakTorque.Of(Shaft).ToString());
}
