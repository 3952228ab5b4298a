using Driveline.Fatigue;
using Driveline.Provenance;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Driveline.Tests.Fatigue;

public class SNCurveTests
{
    [Theory]
    [InlineData(100, 2e6, "category: 2e6 cycles by definition, EN 1993-1-9:2005 7.1")]
    [InlineData(150, 263374, "rainflow pack: N = 2e6 (100/150)^5")]
    [InlineData(200, 62500, "rainflow pack: 2e6 / 32")]
    [InlineData(300, 8230.45, "rainflow pack: 2e6 / 243")]
    public void BoltsInShear_Range_GivesLife(double mpa, double cycles, string source) =>
        Close.Relative(cycles, SNCurve.BoltsInShear.CyclesAt(Pressure.FromMegapascals(mpa)), 2e-6, source + ", six figures");

    [Fact]
    public void BoltsInShear_CutOff_Is457()
    {
        Close.Absolute(45.731, SNCurve.BoltsInShear.CutOff.Megapascals, 0.0005, "rainflow pack: 0.45731 of the category");
        Assert.Equal(BasisKind.FromMemory, SNCurve.BoltsInShear.Basis.Kind);
    }

    [Theory]
    [InlineData(45.7, true)]
    [InlineData(45.74, false)]
    public void CyclesAt_AroundTheCutOff_EndlessOnlyBelow(double mpa, bool endless) =>
        Assert.Equal(endless, double.IsPositiveInfinity(SNCurve.BoltsInShear.CyclesAt(Pressure.FromMegapascals(mpa))));

    [Theory]
    [InlineData(1e8)]
    [InlineData(1e9)]
    public void RangeAt_CutOffCyclesAndMore_IsTheCutOff(double cycles) =>
        Assert.Equal(SNCurve.BoltsInShear.CutOff.Pascals, SNCurve.BoltsInShear.RangeAt(cycles).Pascals);

    [Law]
    public Property RangeAt_OfCyclesAt_IsTheRange() => Prop.ForAll(Gen.Choose(46, 2000).ToArbitrary(), mpa =>
        Math.Abs(SNCurve.BoltsInShear.RangeAt(
            SNCurve.BoltsInShear.CyclesAt(Pressure.FromMegapascals(mpa))).Megapascals - mpa) < 1e-9 * mpa);

    [Fact]
    public void CyclesAt_NegativeRange_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => SNCurve.BoltsInShear.CyclesAt(Pressure.FromMegapascals(-1)));

    [Fact]
    public void Shear_OtherCategory_ScalesTheStress() => Close.Relative(
        62500,
        SNCurve.Shear(Pressure.FromMegapascals(80), Basis.Given("the case")).CyclesAt(Pressure.FromMegapascals(160)),
        1e-12,
        "hand: twice the category, 2e6 / 32");
}
