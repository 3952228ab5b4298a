using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Tests.ShearBolts;

public class ShearRatiosPublished
{
    // The pack's class series, read in named copies, on the rows that are bolts of those classes.
    [Theory]
    [InlineData("SB01", ShearClass.Soft56)]
    [InlineData("SB01", ShearClass.ColdWorked48)]
    [InlineData("SB01", ShearClass.ColdWorked58)]
    [InlineData("SB01", ShearClass.ColdWorked68)]
    [InlineData("SB01", ShearClass.ColdHeaded)]
    [InlineData("SB02", ShearClass.Quenched88)]
    [InlineData("SB03", ShearClass.Quenched109)]
    [InlineData("SB04", ShearClass.Quenched129)]
    [InlineData("SB16", ShearClass.BarSteel)]
    public void Expected_OfClass_IsTheSourcesRatioAndCommonPractice(string id, ShearClass shearClass)
    {
        double expected = ReferenceTable.Read("fasteners", "shear-sources-2026-11.csv").Single(r => r["id"] == id).Number("value");
        foreach (PlaneThrough plane in new[] { PlaneThrough.Shank, PlaneThrough.Thread })
        {
            RatioBand ratio = ShearRatios.Of(shearClass, plane).Ratio;
            Close.Absolute(expected, ratio.Expected!.Value, 1e-12, id);
            Assert.Equal(BasisKind.CommonPractice, ratio.Basis.Expected.Kind);
        }
    }

    // Rivets and annealed mild steel 0.75 to 0.80 (SB12), the class series 0.70 (SB01): a soft headed bolt lies between.
    [Fact]
    public void Expected_OfSoftHeadedBolts_LiesBetweenSeriesAndMildSteelTests()
    {
        Close.Cite("SB12");
        Assert.InRange(ShearRatios.Of(ShearClass.Soft46, PlaneThrough.Shank).Ratio.Expected!.Value, 0.70 + 0.02, 0.75 - 0.01);
    }

    // 0.80 to 0.85 (SB05): the maximum of whatever is not hardened.
    [Theory]
    [InlineData(ShearClass.Soft46)]
    [InlineData(ShearClass.Soft56)]
    [InlineData(ShearClass.ColdHeaded)]
    [InlineData(ShearClass.ColdWorked48)]
    [InlineData(ShearClass.BarSteel)]
    [InlineData(ShearClass.NotKnown)]
    public void High_NotHardened_IsTheTopOfStructuralSteel(ShearClass shearClass) =>
        Close.Absolute(
            0.85, ShearRatios.Of(shearClass, PlaneThrough.Shank).Ratio.High!.Value, 1e-12, "SB05: VDI 2230-1:2015 Table 6, 0.80 to 0.85");

    // The code multiplies the nominal strength; the ratio of the strength ISO 898-1 promises is smaller by as much.
    [Theory]
    [InlineData(ShearClass.Soft46, 0.6, ShearArea.Root, "EN 1993-1-8:2005 Table 3.4, class 4.6; root area kept for a true low")]
    [InlineData(ShearClass.Soft56, 0.6, ShearArea.Root, "EN 1993-1-8:2005 Table 3.4, class 5.6")]
    [InlineData(ShearClass.Quenched88, 0.6, ShearArea.Root, "EN 1993-1-8:2005 Table 3.4, class 8.8")]
    [InlineData(ShearClass.ColdWorked48, 0.476190, ShearArea.Stress, "EN 1993-1-8:2005 Table 3.4, class 4.8: 0.5 · 400/420")]
    [InlineData(ShearClass.ColdWorked58, 0.480769, ShearArea.Stress, "EN 1993-1-8:2005 Table 3.4, class 5.8: 0.5 · 500/520")]
    [InlineData(ShearClass.ColdWorked68, 0.5, ShearArea.Stress, "EN 1993-1-8:2005 Table 3.4, class 6.8: 0.5 · 600/600")]
    [InlineData(ShearClass.Quenched109, 0.480769, ShearArea.Stress, "EN 1993-1-8:2005 Table 3.4, class 10.9: 0.5 · 1000/1040")]
    public void Low_ThreadedPlane_IsTheCodesRatio(ShearClass shearClass, double expected, object area, string source)
    {
        ShearRatio ratio = ShearRatios.Of(shearClass, PlaneThrough.Thread);
        Close.Absolute(expected, ratio.Ratio.Low, 1e-6, source);
        Assert.Equal(area, ratio.LowArea);
        Assert.Equal(BasisKind.Published, ratio.Ratio.Basis.Low.Kind);
        Assert.Equal(ShearArea.MeanThreaded, ratio.ExpectedArea);
        Assert.Equal(ShearArea.GreatestThreaded, ratio.HighArea);
    }

    // A bolt of a class not known may be of the one with the lowest ratio: 4.8, 0.5 · 400/420 on the stress area.
    [Fact]
    public void Low_ThreadedPlaneOfClassNotKnown_IsTheLowestOfTheCode()
    {
        ShearRatio unknown = ShearRatios.Of(ShearClass.NotKnown, PlaneThrough.Thread);
        Close.Absolute(0.476190, unknown.Ratio.Low, 1e-6, "EN 1993-1-8:2005 Table 3.4, class 4.8");
        Assert.Equal(ShearArea.Stress, unknown.LowArea);
        Assert.Equal(ShearArea.Plain, ShearRatios.Of(ShearClass.NotKnown, PlaneThrough.Shank).LowArea);
    }

    [Theory]
    [InlineData(ShearClass.Soft46)]
    [InlineData(ShearClass.ColdWorked58)]
    [InlineData(ShearClass.Quenched88)]
    [InlineData(ShearClass.Quenched109)]
    public void Low_PlainPlane_IsSixTenthsOfAllClasses(ShearClass shearClass) =>
        Close.Absolute(0.6, ShearRatios.Of(shearClass, PlaneThrough.Shank).Ratio.Low, 1e-12,
            "EN 1993-1-8:2005 Table 3.4, shank in plane, all classes");

    // Every row of the pack that gives an ultimate ratio for a class lies within that class's band.
    [Theory]
    [InlineData("fastener institute guide", "carbon-steel fasteners", ShearClass.Soft46)]
    [InlineData("fastener institute guide", "carbon-steel fasteners", ShearClass.Quenched88)]
    [InlineData("AS 4100", "4.6/S, 8.8/S", ShearClass.Soft46)]
    [InlineData("AS 4100", "4.6/S, 8.8/S", ShearClass.Quenched88)]
    [InlineData("textbook estimate", "wrought and alloy steel", ShearClass.Soft46)]
    [InlineData("textbook estimate", "aluminium alloys", ShearClass.Aluminium)]
    [InlineData("data", "2024-T4 aluminium", ShearClass.Aluminium)]
    [InlineData("data", "2117-T4 aluminium", ShearClass.Aluminium)]
    [InlineData("data", "flat-head alloy socket screw body", ShearClass.Quenched129)]
    public void Band_OfClass_HoldsThePacksRatio(string rule, string appliesTo, ShearClass shearClass)
    {
        ReferenceRow row = Assert.Single(
            ReferenceTable.Read("fasteners", "shear-ratio.csv"), r => r["source_rule"] == rule && r["applies_to"] == appliesTo);
        Close.Cite(row["source"]);
        RatioBand band = ShearRatios.Of(shearClass, PlaneThrough.Shank).Ratio;
        Assert.InRange(row.Number("ratio_tau_to_Rm"), band.Low, band.High!.Value);
    }

    [Theory]
    [InlineData("textbook estimate", "copper and copper alloys", ShearClass.Copper)]
    [InlineData("data", "6061-T6 aluminium", ShearClass.Aluminium)]
    [InlineData("data", "mild-steel weld studs UNC", ShearClass.Soft46)]
    public void Band_OfClass_HoldsBothEndsOfThePacksRange(string rule, string appliesTo, ShearClass shearClass)
    {
        ReferenceRow row = Assert.Single(
            ReferenceTable.Read("fasteners", "shear-ratio.csv"), r => r["source_rule"] == rule && r["applies_to"] == appliesTo);
        Close.Cite(row["source"]);
        RatioBand band = ShearRatios.Of(shearClass, PlaneThrough.Shank).Ratio;
        Assert.True(row.Number("low") >= band.Low && row.Number("high") <= band.High!.Value, row.ToString());
    }

    // 0.577 is a yield ratio: no end of any class is one.
    [Fact]
    public void Ratios_OfEveryClass_NeverTheYieldRatio()
    {
        foreach (ShearClass shearClass in Enum.GetValues<ShearClass>())
        {
            foreach (PlaneThrough plane in new[] { PlaneThrough.Shank, PlaneThrough.Thread, PlaneThrough.Neck, PlaneThrough.Step,
                PlaneThrough.Taper })
            {
                Band ratio = ShearRatios.Of(shearClass, plane).Ratio.SiBand;
                Assert.DoesNotContain(new[] { ratio.Low, ratio.Expected, ratio.High }, r => Math.Abs(r - 0.577) < 0.002);
            }
        }
    }

    [Fact]
    public void Of_88ThroughTheShank_IsTheExampleOfTheTable()
    {
        ShearRatio ratio = ShearRatios.Of(ShearClass.Quenched88, PlaneThrough.Shank);
        Assert.Equal(new Band(0.60, 0.65, 0.72), ratio.Ratio.SiBand);
        Assert.Equal(ShearArea.Plain, ratio.HighArea);
    }

    [Fact]
    public void Of_PlaneNotKnown_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ShearRatios.Of(ShearClass.Soft46, PlaneThrough.NotKnown));

    [Fact]
    public void Of_ClassNotKnown_IsTheWidestOfTheSteels()
    {
        foreach (PlaneThrough plane in new[] { PlaneThrough.Shank, PlaneThrough.Thread })
        {
            Band widest = ShearRatios.Of(ShearClass.NotKnown, plane).Ratio.SiBand;
            foreach (ShearClass steel in Enum.GetValues<ShearClass>()
                .Where(c => c is not (ShearClass.NotKnown or ShearClass.Aluminium or ShearClass.Copper)))
            {
                Band ratio = ShearRatios.Of(steel, plane).Ratio.SiBand;
                Assert.True(widest.Low <= ratio.Low && widest.High >= ratio.High, steel + " " + plane);
            }
        }
    }

    // A rise of the number of remembered ends shows here and needs a reason.
    [Fact]
    public void Ratios_FromMemory_AreCounted()
    {
        int remembered = 0;
        foreach (ShearClass shearClass in Enum.GetValues<ShearClass>())
        {
            BandBasis basis = ShearRatios.Of(shearClass, PlaneThrough.Shank).Ratio.Basis;
            remembered += new[] { basis.Low, basis.Expected, basis.High }.Count(b => b.Kind == BasisKind.FromMemory);
        }

        // Low: 12.9, aluminium, not known. Expected: not known. High: four quenched classes, aluminium, not known.
        Assert.Equal(3 + 1 + 6, remembered);
    }
}
