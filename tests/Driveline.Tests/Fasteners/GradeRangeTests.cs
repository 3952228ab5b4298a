using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Fasteners;

/// <summary>Each end of the strength of one row. DIN 50150: HV 285 is 915 MPa, HV 320 is 1030 MPa, HV 360 is 1155 MPa.</summary>
public sealed class GradeRangeTests
{
    private static readonly Basis Printed = Basis.Published("a table", "2020", "Table 1");

    private static readonly Basis Remembered = Basis.FromMemory("another table");

    private static readonly HardnessRange Vickers = HardnessRange.Of(HardnessScale.Vickers, 250, 320);   // middle HV 285

    private static GradeRange Row(double leastMpa, HardnessRange? hardness) =>
        GradeRange.Of(SizeRange.Millimeters(5, 16, "M5 to M16"), "MPa", null, null, leastMpa, hardness, Printed);

    private static Sourced Mpa(double value) => new(value, "MPa", Remembered);

    private static void IsMpa(double low, double? expected, double? high, GradeRange row)
    {
        StressBand tensile = row.Strength.Tensile;
        Assert.Equal(low, tensile.Low.Megapascals, 1e-6);
        Assert.Equal(expected ?? double.PositiveInfinity, tensile.SiBand.Expected / 1e6, 1e-6);
        Assert.Equal(high ?? double.PositiveInfinity, tensile.SiBand.High / 1e6, 1e-6);
    }

    [Fact]
    public void Tensile_StrengthAlone_HasNoHighEnd()
    {
        GradeRange row = Row(800, null);
        IsMpa(800, null, null, row);
        Assert.Equal(new BandBasis(Printed, Printed, Printed, BandEnd.Limit, BandEnd.Interval95), row.Strength.Tensile.Basis);
    }

    [Fact]
    public void Tensile_MaximumPrinted_IsItsEndAndTheMiddleIsExpected()
    {
        GradeRange row = Row(400, null).WithMaximum(Mpa(550));
        IsMpa(400, 475, 550, row);   // (400 + 550) / 2
        Assert.Equal(BandEnd.Limit, row.Strength.Tensile.Basis.HighEnd);
        Assert.Equal(Remembered, row.Strength.Tensile.Basis.High);
        Assert.Equal(Remembered, row.Strength.Tensile.Basis.Expected);
        Assert.Equal(
            BasisKind.CommonPractice, Row(400, null).WithMaximum(new Sourced(550, "MPa", Printed)).Strength.Tensile.Basis.Expected.Kind);
    }

    [Fact]
    public void Tensile_HardnessPrinted_IsThatOfItsMiddleAndMaximum()
    {
        GradeRange row = Row(800, Vickers);
        IsMpa(800, 915, 1030, row);
        Assert.Equal(BandEnd.Interval95, row.Strength.Tensile.Basis.HighEnd);
        IsMpa(950, 950, 1030, Row(950, Vickers));                            // never below what is promised
        IsMpa(800, 900, 900, Row(800, Vickers).WithMaximum(Mpa(900)));       // nor above what is allowed
        IsMpa(800, 915, 1155, Row(800, Vickers).WithWorstHardness(new Sourced(360, "HV", Remembered)));
    }

    [Fact]
    public void HighBasis_OfHardness_IsThatOfWhereItWasRead()
    {
        Assert.NotEqual(BasisKind.FromMemory, Row(800, Vickers).Strength.Tensile.Basis.High.Kind);
        GradeRange elsewhere = Row(800, Vickers).WithHardnessOf(Remembered);
        Assert.Equal(Remembered, elsewhere.Strength.Tensile.Basis.High);
        Assert.Equal(Remembered, elsewhere.HardnessBasis);
        Assert.Equal(Printed, elsewhere.Basis);
        Assert.Equal(
            Remembered, Row(800, Vickers).WithWorstHardness(new Sourced(360, "HV", Remembered)).Strength.Tensile.Basis.High);
    }

    // Below HRB 65 no table gives a strength.
    [Fact]
    public void Tensile_HardnessOffTheTable_IsNoHelp()
    {
        HardnessRange soft = HardnessRange.Of(HardnessScale.RockwellB, 50, 60);
        IsMpa(300, null, null, Row(300, soft));
        IsMpa(300, 350, 400, Row(300, soft).WithMaximum(Mpa(400)));
    }

    [Fact]
    public void Strength_ProofAndYield_AreAsPrintedOrNull()
    {
        GradeRange both = GradeRange.Of(SizeRange.Millimeters(5, 16, "M5 to M16"), "MPa", 580, 640, 800, null, Printed);
        Assert.Equal(580, both.Strength.ProofStress!.Value.Megapascals, 1e-9);
        Assert.Equal(640, both.Strength.YieldStrength!.Value.Megapascals, 1e-9);
        Assert.Null(Row(800, null).Strength.ProofStress);
        Assert.Null(Row(800, null).Strength.YieldStrength);
    }

    [Fact]
    public void WithConflict_Twice_KeepsBoth()
    {
        GradeRange row = Row(800, Vickers).WithConflict("proof", Mpa(580), Mpa(600)).WithConflict("yield", Mpa(640), Mpa(660));
        Assert.Equal(2, row.Conflicts.Count);
        IsMpa(800, 915, 1030, row);
        Assert.Equal("M5 to M16", row.ToString());
    }
}
