using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class ShearBoltTests
{
    private static readonly ScrewThread M12 = ScrewThread.Parse("M12");

    private static readonly RodMaterial Soft = RodMaterial.Parse("2024-T4");

    [Fact]
    public void Special_NeckAndHardnessKnown_IsBoundedByTheNeck()
    {
        // HV 250 is 800 MPa; neck 8 mm = 50.27 mm².
        ShearBolt bolt = ShearBolt.Special(M12, PlaneThrough.Neck, Length.FromMillimeters(8), Hardness.Parse("HV 250"));
        Band load = ShearPlane.Of(bolt).Load.SiBand;
        Close.Relative(0.65 * 800e6 * 50.265e-6, load.Expected, 0.01, "hand: 0.65 × 800 MPa × 50.27 mm²");
        Assert.True(load.Low > 0 && !double.IsPositiveInfinity(load.High));
    }

    // Single bolts gave 0.62 ± 0.03 of their own tensile strength: 0.56 at two standard deviations, less than the code's 0.60 of the
    // promised one.
    [Fact]
    public void Low_HardnessMeasured_IsTheTestsLeastRatio()
    {
        FastenerMaterial measured = FastenerMaterial.OfMeasuredHardness(Hardness.Parse("HRC 28"));
        double area = Math.PI / 4 * 0.010 * 0.010;
        Close.Relative(
            0.56 * measured.Tensile!.SiBand.Low * area,
            ShearPlane.Of(ShearBolt.Pin(Length.FromMillimeters(10), measured)).Load.SiBand.Low, 1e-9, "hand: 0.62 − 2 · 0.03");
        Assert.Equal(0.60, ShearRatios.Of(ShearClass.Quenched88, PlaneThrough.Shank).Ratio.Low);
    }

    [Fact]
    public void Special_NeckNotKnown_HighIsTheFullShankAndLowNothing()
    {
        ShearBolt bolt = ShearBolt.Special(M12, PlaneThrough.Step, null, Hardness.Parse("HV 250"));
        Band load = ShearPlane.Of(bolt).Load.SiBand;
        Band shank = ShearPlane.Of(
            ShearBolt.Of(M12, FastenerMaterial.OfMeasuredHardness(Hardness.Parse("HV 250"))).With(PlaneThrough.Shank)).Load.SiBand;
        Assert.Equal(0, load.Low);
        Assert.Equal(shank.High, load.High);
        BreakTorque trip = Trip(bolt);
        Assert.True(trip.IsKnown);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.NeckNotKnown);
    }

    [Fact]
    public void Special_HardnessNotKnown_IsNotKnown()
    {
        BreakTorque trip = Trip(ShearBolt.Special(M12, PlaneThrough.Neck, Length.FromMillimeters(8), null));
        Assert.False(trip.IsKnown);
        Assert.Contains(trip.Findings, f => f.Code == ShearBoltFindings.SpecialStrengthNotKnown);
    }

    [Theory]
    [InlineData(PlaneThrough.NotKnown)]
    [InlineData(PlaneThrough.Shank)]
    [InlineData(PlaneThrough.Thread)]
    public void Special_PlainPlane_IsRefused(PlaneThrough plane) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearBolt.Special(M12, plane, null, null));

    [Theory]
    [InlineData(12, true)]
    [InlineData(12.01, false)]
    [InlineData(0, false)]
    public void WithNeckDiameter_AroundTheNominal_AcceptsUpToIt(double mm, bool accepted)
    {
        ShearBolt bolt = ShearBolt.Special(M12, PlaneThrough.Neck, null, null);
        if (accepted)
        {
            Close.Absolute(mm, bolt.WithNeckDiameter(Length.FromMillimeters(mm)).NeckDiameter!.Value.Millimeters, 1e-9, "round trip");
        }
        else
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => bolt.WithNeckDiameter(Length.FromMillimeters(mm)));
        }
    }

    [Theory]
    [InlineData(PlaneThrough.Thread)]
    [InlineData(PlaneThrough.NotKnown)]
    public void Pin_PlaneItDoesNotHave_IsRefused(PlaneThrough plane)
    {
        ShearBolt pin = ShearBolt.Pin(Length.FromMillimeters(10), FastenerMaterial.Rod(Soft));
        var error = Assert.Throws<ArgumentException>(() => pin.With(plane));
        Assert.Contains("it has no thread", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NeckDiameter_PlaneNotKnown_LowersTheLow()
    {
        ShearBolt bolt = ShearBolt.Of(M12, Iso898.Class8_8);
        Band plain = ShearPlane.Of(bolt).Load.SiBand, necked = ShearPlane.Of(bolt.WithNeckDiameter(Length.FromMillimeters(8))).Load.SiBand;
        Close.Absolute(0.6 * 800e6 * 50.265e-6, necked.Low, 1, "hand: 0.6 × 800 MPa × π/4 8² mm²");
        Assert.True(necked.Low < plain.Low && necked.Expected < plain.Expected);
        Assert.Equal(plain.High, necked.High);
    }

    [Fact]
    public void SpringPin_NeckOrMaterial_IsRefused()
    {
        ShearBolt pin = ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm"));
        Assert.Throws<InvalidOperationException>(() => pin.WithNeckDiameter(Length.FromMillimeters(5)));
        Assert.Throws<InvalidOperationException>(() => pin.WithMaterial(FastenerMaterial.NotKnown));
    }

    [Fact]
    public void SpringPin_PlaneThroughNeck_IsRefused() =>
        Assert.Throws<ArgumentException>(() => ShearBolt.SpringPin(SpringPin.Parse("ISO 8752 8 mm")).With(PlaneThrough.Neck));

    [Fact]
    public void Pin_Aluminium2024_TypicalShearLiesInTheBand()
    {
        ShearBolt pin = ShearBolt.Pin(Length.FromMillimeters(10), FastenerMaterial.Rod(Soft));
        Band load = ShearPlane.Of(pin).Load.SiBand;

        // Typical shear 41 ksi = 282.7 MPa on π/4 10² mm² = 78.54 mm².
        Assert.True(load.Low < 282.7e6 * 78.54e-6, load.ToString());
        Assert.True(load.High > 282.7e6 * 78.54e-6, load.ToString());
    }

    [Fact]
    public void Body_StyleKnown_NarrowsTheShank()
    {
        ShearBolt any = ShearBolt.Of(ScrewThread.Parse("1/2-13 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank);
        Band wide = ShearPlane.Of(any).Load.SiBand, narrow = ShearPlane.Of(any.WithBody(BodyStyle.HexCapScrew)).Load.SiBand;
        Assert.True(wide.Low < narrow.Low && wide.High > narrow.High);

        // 0.515 in against 0.500 in; 0.483 in against 0.493 in.
        Close.Relative(1.0609, wide.High / narrow.High, 1e-4, "hand: (0.515/0.500)²");
        Close.Relative(0.95984, wide.Low / narrow.Low, 1e-4, "hand: (0.483/0.493)²");
    }

    [Fact]
    public void Of_GradeNotHeldAtSize_IsRefusedWithSizes() =>
        Assert.Throws<ArgumentException>(() => ShearBolt.Of(ScrewThread.Parse("M24"), Iso898.Class9_8));

    [Fact]
    public void ToString_Bolt_ReadsAsTheTradeWritesIt() =>
        Assert.Equal("1/2-13 UNC SAE 2", ShearBolt.Of(ScrewThread.Parse("1/2-13 UNC"), SaeJ429.Grade2).ToString());

    private static BreakTorque Trip(ShearBolt bolt) =>
        BreakTorque.Of(ShearBoltJoint.Tangential(bolt, Length.FromMillimeters(60)).WithHub(HubState.Free));
}
