using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

/// <summary>Which area, ratio and source each end of a shear plane takes.</summary>
public class ShearPlaneTests
{
    private static readonly ScrewThread M12 = ScrewThread.Parse("M12");

    private static readonly ShearBolt Bolt = ShearBolt.Of(M12, Iso898.Class8_8);

    [Fact]
    public void Unknown_NeckTold_SpansThreadShankAndNeck()
    {
        ShearBolt necked = Bolt.WithNeckDiameter(Length.FromMillimeters(6));
        Band thread = ShearPlane.Of(Bolt.With(PlaneThrough.Thread)).Load.SiBand;
        Band shank = ShearPlane.Of(Bolt.With(PlaneThrough.Shank)).Load.SiBand;
        Band neck = ShearPlane.Of(necked.With(PlaneThrough.Neck)).Load.SiBand;
        Band any = ShearPlane.Of(necked).Load.SiBand;
        Close.Relative(neck.Low, any.Low, 1e-12, "the neck is the thinnest");
        Close.Relative(shank.High, any.High, 1e-12, "the shank is the thickest");
        double withoutNeck = (thread.Expected + shank.Expected) / 2;
        Close.Relative((withoutNeck + neck.Expected) / 2, any.Expected, 1e-12, "midway, then midway to the neck");
    }

    // The high end is the larger of 1.16 A_s and 0.89 of the shank, and the low the root; the ends say so.
    [Fact]
    public void Unknown_Ends_AreThoseOfThreadAndShank()
    {
        ShearPlane thread = ShearPlane.Of(Bolt.With(PlaneThrough.Thread)), shank = ShearPlane.Of(Bolt.With(PlaneThrough.Shank));
        ShearPlane any = ShearPlane.Of(Bolt);
        Assert.Equal(thread.Low, any.Low);
        Assert.Equal(shank.High, any.High);
        Close.Relative((thread.Expected.AreaM2 + shank.Expected.AreaM2) / 2, any.Expected.AreaM2, 1e-12, "midway");
        Assert.Equal(shank.Expected.Ratio, any.Expected.Ratio);
    }

    // Thread and shank of an inch bolt rest on printed figures and on practice; that it is the middle of the two is from memory.
    [Fact]
    public void Unknown_Basis_IsFromMemoryInTheMiddleAlone()
    {
        BandBasis basis = ShearPlane.Of(
            ShearBolt.Of(ScrewThread.Parse("1/2-13 UNC"), SaeJ429.Grade2).WithBody(BodyStyle.HexCapScrew)).Load.Basis;
        Assert.Equal("shear plane not known: midway between the parts it may cut", basis.Expected.Document);
        Assert.NotEqual(BasisKind.FromMemory, basis.Low.Kind);
    }

    [Fact]
    public void Material_NotKnown_HoldsNothingForCertainAndSaysWhy()
    {
        ShearPlane plane = ShearPlane.Of(ShearBolt.Of(M12, FastenerMaterial.NotKnown).With(PlaneThrough.Shank));
        Assert.Equal(new Band(0, double.PositiveInfinity, double.PositiveInfinity), plane.Load.SiBand);
        Assert.All(new[] { plane.Load.Basis.Low, plane.Load.Basis.Expected, plane.Load.Basis.High },
            b => Assert.Equal(BasisKind.FromMemory, b.Kind));
        Assert.Contains(plane.Load.Basis.Low.Document, new[] { "strength of the bolt not known", "lowest ratio of every steel held" });
    }

    // Of a measured hardness the low end rests on tests from memory, and is an interval; of a grade it is the code's.
    [Fact]
    public void Basis_HardnessMeasured_LowIsFromTests()
    {
        Basis measured = Low(FastenerMaterial.OfMeasuredHardness(Hardness.Parse("HRC 28")), out BandEnd end);
        Assert.Equal("mean ratio 0.62 less two standard deviations (0.03) of single-bolt tests", measured.Document);
        Assert.Equal(BandEnd.Interval95, end);
        Basis soft = Low(FastenerMaterial.OfMeasuredHardness(Hardness.Parse("HRB 80")), out _);
        Assert.NotEqual(measured, soft);
        Assert.NotEqual(measured, Low(FastenerMaterial.Graded(Iso898.Class8_8, M12), out _));
    }

    // The least tested ratio of 0.56 is no rise for 12.9, whose low ratio is 0.54.
    [Theory]
    [InlineData("HRC 28", 0.56, "8.8 and its like: 0.60 cut to 0.56")]
    [InlineData("HRC 42", 0.54, "12.9 and its like")]
    public void LowRatio_HardnessMeasured_IsAtMostTheLeastTested(string hardness, double ratio, string why) => Close.Absolute(
        ratio,
        ShearPlane.Of(ShearBolt.Pin(Length.FromMillimeters(10), FastenerMaterial.OfMeasuredHardness(Hardness.Parse(hardness)))).Low.Ratio,
        1e-12, why);

    // A published load of two planes: half of it on π/4 · 8² = 50.265 mm², which only carries it.
    [Fact]
    public void SpringPin_Low_IsHalfTheDoubleShear()
    {
        SpringPin pin = SpringPin.Parse("ISO 8752 8 mm");
        ShearPlane plane = ShearPlane.Of(ShearBolt.SpringPin(pin));
        Close.Relative(50.2655e-6, plane.Low.AreaM2, 1e-5, "π/4 · 8²");
        Assert.Equal(1, plane.Low.Ratio);
        Close.Relative(pin.MinimumDoubleShearN / 2, plane.Load.SiBand.Low, 1e-12, "half of double shear");
        Assert.False(plane.Load.HasExpected);
        Assert.Equal(pin.PublishedLoad.Basis, plane.Load.Basis.Low);
    }

    // M12: A_s = π/4 · (12 − 0.9382 · 1.75)² = 84.27 mm²; d3 = 9.8530 mm, 76.25 mm². 4.8 is read on the stress area, 8.8 on the root.
    [Theory]
    [InlineData("8.8", 76.25, "root")]
    [InlineData("4.8", 84.27, "stress area")]
    public void Threaded_LowArea_FollowsTheCodesRatio(string grade, double mm2, string which)
    {
        ShearPlane plane = ShearPlane.Of(ShearBolt.Of(M12, BoltGrade.Parse(grade)).With(PlaneThrough.Thread));
        Close.Relative(mm2 * 1e-6, plane.Low.AreaM2, 1e-3, which);
        Close.Relative(1.08 * 84.27e-6, plane.Expected.AreaM2, 1e-3, "1.08 A_s = 91.0 mm²");
        Close.Relative(0.89 * 113.097e-6, plane.High.AreaM2, 1e-3, "0.89 · π/4 12² = 100.66 mm², above 1.16 A_s = 97.75");
    }

    // The table prints the stress area; the root's is worked from the thread's shape.
    [Fact]
    public void Threaded_LowBasis_IsThatOfItsArea()
    {
        Assert.NotEqual(M12.AreaBasis, M12.RootAreaBasis);
        Assert.Equal(M12.RootAreaBasis, PlaneAreas.Threaded(Bolt).AreaBasis.Low);
        Assert.Equal(M12.AreaBasis, PlaneAreas.Threaded(ShearBolt.Of(M12, BoltGrade.Parse("4.8"))).AreaBasis.Low);
    }

    // A fine thread leaves more: M12x1.25 has A_s = π/4 · (12 − 0.9382 · 1.25)² = 92.07 mm²; 1.16 · 92.07 = 106.8 mm² passes 100.66.
    [Fact]
    public void Threaded_FineThread_HighIsTheStressAreas() => Close.Relative(
        106.8e-6, ShearPlane.Of(ShearBolt.Of(ScrewThread.Parse("M12x1.25"), Iso898.Class8_8).With(PlaneThrough.Thread)).High.AreaM2, 1e-3,
        "1.16 · 92.07 mm²");

    // A shank turned down to 9.8 mm, 75.43 mm², is thinner than the thread's root: no part of the thread counts for more.
    [Fact]
    public void Threaded_ShankThinnerThanTheThread_IsTheShanks()
    {
        ShearPlane plane = ShearPlane.Of(Bolt.With(PlaneThrough.Thread).WithShankDiameter(Length.FromMillimeters(9.8)));
        Assert.All(new[] { plane.Low, plane.Expected, plane.High },
            e => Close.Relative(75.43e-6, e.AreaM2, 1e-3, "π/4 · 9.8²"));
    }

    [Fact]
    public void Threaded_BelowFiveEighths_IsMarkedExtrapolated()
    {
        BandBasis small = ShearPlane.Of(Bolt.With(PlaneThrough.Thread)).Load.Basis;
        BandBasis large = ShearPlane.Of(ShearBolt.Of(ScrewThread.Parse("5/8-11 UNC"), SaeJ429.Grade5).With(PlaneThrough.Thread)).Load.Basis;
        Assert.Contains("extrapolated", ThreadedArea.MeanBasis(M12).Document, StringComparison.Ordinal);
        Assert.Contains("extrapolated", ThreadedArea.GreatestBasis(M12).Document, StringComparison.Ordinal);
        ScrewThread tested = ScrewThread.Parse("5/8-11 UNC");
        Assert.DoesNotContain("extrapolated", ThreadedArea.MeanBasis(tested).Document, StringComparison.Ordinal);
        Assert.DoesNotContain("extrapolated", ThreadedArea.GreatestBasis(tested).Document, StringComparison.Ordinal);
        Assert.Equal(BasisKind.FromMemory, small.High.Kind);
        Assert.Equal(BasisKind.FromMemory, large.High.Kind);
    }

    [Fact]
    public void Plain_Pin_IsItsDiameterAndGiven()
    {
        PlaneAreas pin = PlaneAreas.Plain(ShearBolt.Pin(Length.FromMillimeters(10), FastenerMaterial.NotKnown));
        Close.Relative(78.5398e-6, pin.LowM2, 1e-5, "π/4 · 10²");
        Assert.Equal(pin.LowM2, pin.HighM2);
        Assert.Equal(BasisKind.Given, pin.AreaBasis.Low.Kind);
    }

    [Fact]
    public void Neck_NotTold_IsAnythingUpToTheShank()
    {
        PlaneAreas neck = PlaneAreas.Neck(Bolt.With(PlaneThrough.Neck)), shank = PlaneAreas.Plain(Bolt);
        Assert.Equal(0, neck.LowM2);
        Assert.Equal(shank.HighM2, neck.ExpectedM2);
        Assert.Equal(shank.HighM2, neck.HighM2);
        Assert.Equal(BasisKind.FromMemory, neck.AreaBasis.Low.Kind);
        Assert.Equal(shank.AreaBasis.High, neck.AreaBasis.High);
    }

    private static Basis Low(FastenerMaterial material, out BandEnd end)
    {
        BandBasis basis = ShearPlane.Of(ShearBolt.Of(M12, material).With(PlaneThrough.Shank)).Load.Basis;
        end = basis.LowEnd;
        return basis.Low;
    }
}
