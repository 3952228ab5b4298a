using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Fasteners;

public sealed class FastenerMaterialTests
{
    [Fact]
    public void Material_NotKnown_HasNoStrength()
    {
        Assert.Null(FastenerMaterial.NotKnown.Tensile);
        Assert.False(FastenerMaterial.NotKnown.IsIdentified);
        Assert.Equal(ShearClass.NotKnown, FastenerMaterial.NotKnown.ShearClass);
    }

    [Fact]
    public void Unmarked_InchAndMetric_AreUnboundedWithTheWeakestPlausibleLow()
    {
        // ASTM A307 C, 58 ksi = 399.9 MPa; HRB 85 = 82 ksi = 565.4 MPa. ISO 3.6, 330 MPa; HV 170 = 545 MPa.
        AssertUnmarked(FastenerMaterial.UnmarkedInchBolt, 399.9, 565.4);
        AssertUnmarked(FastenerMaterial.UnmarkedMetricBolt, 330, 545);
    }

    [Theory]
    [InlineData("HRC 28", ShearClass.Quenched88, "26.6 to 27.6 to 28.8 HRC: 130 to 134 ksi, so about 903 MPa: nearest class 8.8")]
    [InlineData("HV 320", ShearClass.Quenched98, "DIN 50150: 1030 MPa")]
    [InlineData("HRC 39", ShearClass.Quenched109, "177 ksi = 1220 MPa")]
    [InlineData("HRC 44", ShearClass.Quenched129, "208 ksi = 1434 MPa")]
    [InlineData("HRB 90", ShearClass.NotKnown, "89 ksi: soft or cold worked, hardness cannot tell")]
    [InlineData("HV 244", ShearClass.Quenched88, "DIN 50150: 770 + 4/5 · 15 = 782 MPa, just above 780")]
    [InlineData("HV 243", ShearClass.NotKnown, "DIN 50150: 770 + 3/5 · 15 = 779 MPa, just below 780")]
    public void MeasuredHardness_Reading_TakesTheNearestShearClass(string reading, ShearClass expected, string source)
    {
        FastenerMaterial material = FastenerMaterial.OfMeasuredHardness(Hardness.Parse(reading));
        Assert.True(material.ShearClass == expected, source);
        Assert.True(material.IsIdentified);
        Assert.True(material.Tensile!.IsBounded);
    }

    [Fact]
    public void MeasuredHardness_OffTheTables_IsRefusedWithTheirRange()
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => FastenerMaterial.OfMeasuredHardness(Hardness.Parse("HRC 60")));
        Assert.Contains("HRC 20 to HRC 45; got HRC 60", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Graded_HalfInchGrade2_CarriesTheGradesBand()
    {
        FastenerMaterial material = FastenerMaterial.Graded(SaeJ429.Grade2, ScrewThread.Parse("1/2-13 UNC"));

        // 74 ksi = 510.2 MPa; HRB 100 = 116 ksi = 799.8 MPa.
        Assert.Equal(510.2, material.Tensile!.Low.Megapascals, 0.05);
        Assert.Equal(799.8, material.Tensile.High!.Value.Megapascals, 0.05);
        Assert.Equal(ShearClass.ColdHeaded, material.ShearClass);
        Assert.Same(SaeJ429.Grade2, material.Grade);
        Assert.Equal(BandEnd.Limit, material.Tensile.Basis.LowEnd);
        Assert.Equal(BandEnd.Interval95, material.Tensile.Basis.HighEnd);
    }

    [Fact]
    public void Rod_TypicalValue_LiesInTheMiddleOfItsBandWidenedByTheConflict()
    {
        // 6061-T6: 45 ksi, elsewhere 42 ksi: low 42 · 0.9 = 37.8 ksi, high 45 · 1.1 = 49.5 ksi.
        StressBand tensile = FastenerMaterial.Rod(RodMaterial.Parse("6061-T6")).Tensile!;
        Assert.Equal(37.8, tensile.Low.KilopoundsForcePerSquareInch, 6);
        Assert.Equal(45, tensile.Expected!.Value.KilopoundsForcePerSquareInch, 6);
        Assert.Equal(49.5, tensile.High!.Value.KilopoundsForcePerSquareInch, 6);
    }

    [Fact]
    public void Rod_MinimumValue_HasNoAssuredMaximum()
    {
        StressBand tensile = FastenerMaterial.Rod(RodMaterial.Parse("C36000")).Tensile!;
        Assert.Equal(55, tensile.Low.KilopoundsForcePerSquareInch, 6);
        Assert.Null(tensile.High);
        Assert.Null(tensile.Expected);
    }

    [Theory]
    [InlineData("2024", "may be 2024-T4 aluminium rod or 2024-T3 aluminium rod or 2024 aluminium bolt")]
    [InlineData("titanium", "is not a rod material held here; held: 1100-H14 aluminium rod")]
    [InlineData("", "is not a rod material held here")]
    public void Rod_AmbiguousOrNotHeld_SaysWhatIsHeld(string text, string expected)
    {
        Assert.False(RodMaterial.TryParse(text, out _, out string? problem));
        Assert.Contains(expected, problem!, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => RodMaterial.Parse(text));
    }

    [Theory]
    [InlineData("SAE 5", "1/2 in", "SAE 5")]
    [InlineData("8.8", "M12", "ISO 8.8")]
    [InlineData("28 HRC", "1/2 in", "HRC 28")]
    [InlineData("6061-T6", "1/2 in", "6061-T6 aluminium rod")]
    [InlineData("Unmarked", "1/2 in", "unmarked inch bolt")]
    [InlineData("no mark", "M12", "unmarked metric bolt")]
    [InlineData("not known", "M12", "not known")]
    [InlineData("unknown", "M12", "not known")]
    public void Material_WrittenByPeople_IsUnderstood(string text, string thread, string name) =>
        Assert.Equal(name, FastenerMaterial.Parse(text, ScrewThread.Parse(thread)).Name);

    [Theory]
    [InlineData("8.8", "1/2-13 UNC", "ISO 8.8 is not held at 1/2-13 UNC; held: M1.6 to M16")]
    [InlineData("HRC 60", "M12", "The conversion tables held reach from HRC 20 to HRC 45; got HRC 60")]
    [InlineData("2024", "M12", "may be 2024-T4 aluminium rod or")]
    [InlineData("cheese", "M12", "is not a bolt grade held here; held: SAE 1")]
    [InlineData("", "M12", "Also read here: a hardness such as HRC 28")]
    public void Material_NotHeld_SaysWhatIsHeld(string text, string thread, string expected)
    {
        Assert.False(FastenerMaterial.TryParse(text, ScrewThread.Parse(thread), out FastenerMaterial? material, out string? problem));
        Assert.Null(material);
        Assert.Contains(expected, problem!, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => FastenerMaterial.Parse(text, ScrewThread.Parse(thread)));
    }

    private static void AssertUnmarked(FastenerMaterial material, double lowMpa, double expectedMpa)
    {
        Assert.False(material.IsIdentified);
        Assert.Equal(ShearClass.NotKnown, material.ShearClass);
        Assert.Equal(lowMpa, material.Tensile!.Low.Megapascals, 0.05);
        Assert.Equal(expectedMpa, material.Tensile.Expected!.Value.Megapascals, 0.05);
        Assert.Null(material.Tensile.High);
        Assert.Equal(BandEnd.Interval95, material.Tensile.Basis.LowEnd);
        Assert.Equal(BasisKind.CommonPractice, material.Tensile.WeakestBasis.Kind);
    }
}
