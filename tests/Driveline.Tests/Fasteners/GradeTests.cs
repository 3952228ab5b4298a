using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Fasteners;

public sealed class GradeTests
{
    [Theory]
    [InlineData("SAE grade 5", "SAE 5")]
    [InlineData("grade 5", "SAE 5")]
    [InlineData("Gr.5", "SAE 5")]
    [InlineData("gr 8", "SAE 8")]
    [InlineData("SAE J429 grade 2", "SAE 2")]
    [InlineData("SAE J429 Gr. 5.2", "SAE 5.2")]
    [InlineData("5", "SAE 5")]
    [InlineData("8.2", "SAE 8.2")]
    [InlineData("8.8", "ISO 8.8")]
    [InlineData("8,8", "ISO 8.8")]
    [InlineData("class 8.8", "ISO 8.8")]
    [InlineData("property class 10.9", "ISO 10.9")]
    [InlineData("ISO 8.8", "ISO 8.8")]
    [InlineData("ISO 898-1 8.8", "ISO 8.8")]
    [InlineData("EN ISO 898-1 class 4.6", "ISO 4.6")]
    [InlineData("12.9 underlined", "ISO 12.9 underlined")]
    [InlineData("A307A", "ASTM A307 A")]
    [InlineData("ASTM A307 Grade A", "ASTM A307 A")]
    [InlineData("A307 grade B", "ASTM A307 B")]
    [InlineData("A449", "ASTM A449")]
    [InlineData("ASTM A449 type 1", "ASTM A449")]
    [InlineData("A325", "ASTM A325")]
    [InlineData("F3125 A325", "ASTM A325")]
    [InlineData("ASTM F3125 Grade A490", "ASTM A490")]
    [InlineData("A354 BD", "ASTM A354 BD")]
    [InlineData("ASTM F1554 Grade 36", "ASTM F1554 36")]
    [InlineData("A2-70", "A2-70")]
    [InlineData("a2 70", "A2-70")]
    [InlineData("ISO 3506-1 A4-80", "A4-80")]
    public void Grade_WrittenByPeople_IsUnderstood(string text, string designation) =>
        Assert.Equal(designation, BoltGrade.Parse(text).Designation);

    [Theory]
    [InlineData("grade 10", "Grade \"10\" is not in the SAE J429 data held here; held: 1, 2, 4, 5, 5.1, 5.2, 7, 8, 8.1, 8.2.")]
    [InlineData("SAE 10", "Grade \"10\" is not in the SAE J429 data held here; held: 1, 2, 4, 5, 5.1, 5.2, 7, 8, 8.1, 8.2.")]
    [InlineData("ISO 7.7", "\"ISO 7.7\" is not in the ISO 898-1 and ISO 3506-1 data held here; held: 3.6, 4.6, 4.8")]
    [InlineData("ASTM A36", "\"ASTM A36\" is not in the ASTM data held here; held: ASTM A307 A")]
    [InlineData("", "A bolt grade is needed; got no text.")]
    [InlineData("   ", "A bolt grade is needed; got no text.")]
    [InlineData("SAE 8.8", "is not in the SAE J429 data held here")]
    [InlineData("ISO 5", "is not in the ISO 898-1")]
    [InlineData("A2", "is not a bolt grade held here; held: SAE 1")]
    [InlineData("strong", "is not a bolt grade held here; held: SAE 1")]
    public void Grade_NotHeld_SaysWhatIsHeld(string text, string expected)
    {
        Assert.False(BoltGrade.TryParse(text, out BoltGrade? grade, out string? problem));
        Assert.Null(grade);
        Assert.Contains(expected, problem!, StringComparison.Ordinal);
        Assert.Contains(expected, Assert.Throws<ArgumentException>(() => BoltGrade.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_NullAndVeryLongTexts_AreProblemsNotExceptions()
    {
        Assert.False(BoltGrade.TryParse(null, out _, out string? none));
        Assert.NotNull(none);
        Assert.False(BoltGrade.TryParse(new string('8', 100000), out _, out string? tooLong));
        Assert.Contains("at most 64 characters; got 100000", tooLong!, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_EveryDesignation_ParsesBackToItself() =>
        Assert.All(BoltGrades.All, g => Assert.Same(g, BoltGrade.Parse(g.Designation)));

    // With blanks it is read by patterns, without them found as it stands.
    [Fact]
    public void Grade_EveryDesignationWithBlanks_IsTheSame() =>
        Assert.All(BoltGrades.All, g => Assert.Same(g, BoltGrade.Parse(" " + g.Designation + " ")));

    [Fact]
    public void Grade_NumberOfAPropertyClassWithBlanks_IsTheSame() =>
        Assert.All(
            BoltGrades.All.Where(g => g.Designation.StartsWith("ISO ", StringComparison.Ordinal)).Select(g => g.Designation.Substring(4)),
            number => Assert.Same(BoltGrade.Parse(number), BoltGrade.Parse(" " + number + " ")));

    [Theory]
    [InlineData("SAE 2", "3/4-10 UNC", 74, "SAE J429 Table 1: 1/4 to 3/4 in, the end included")]
    [InlineData("SAE 2", "7/8-9 UNC", 60, "SAE J429 Table 1: over 3/4 in")]
    [InlineData("SAE 5", "1-8 UNC", 120, "SAE J429 Table 1: 1/4 to 1 in")]
    [InlineData("SAE 5", "1-1/8-7 UNC", 105, "SAE J429 Table 1: over 1 in")]
    [InlineData("ASTM A574", "1/2-13 UNC", 180, "textbook table: to 1/2 in")]
    [InlineData("ASTM A574", "9/16-12 UNC", 170, "textbook table: over 1/2 in")]
    [InlineData("ASTM A449", "1-8 UNC", 120, "trade chart: 1/4 to 1 in")]
    [InlineData("ASTM A449", "1-1/8-7 UNC", 105, "trade chart: 1-1/8 to 1-1/2 in")]
    [InlineData("ISO 8.8", "M16", 800, "ISO 898-1:2013 Table 3: d <= 16 mm")]
    [InlineData("ISO 8.8", "M18", 830, "ISO 898-1:2013 Table 3: d > 16 mm")]
    [InlineData("ISO 9.8", "M16", 900, "ISO 898-1:2013 Table 3: d <= 16 mm")]
    [InlineData("A2-70", "M24", 700, "ISO 3506-1:2009: to M24")]
    public void GradeStrength_OnEachSideOfASizeLimit_TakesTheRightRow(string grade, string thread, double printed, string source) =>
        Assert.True(
            Math.Abs(BoltGrade.Parse(grade).At(ScrewThread.Parse(thread)).MinimumTensile.Value - printed) < 1e-9, source);

    [Theory]
    [InlineData("ISO 9.8", "M18", "ISO 9.8 is not held at M18; held: M1.6 to M16.")]
    [InlineData("A2-70", "M27", "A2-70 is not held at M27; held: M1.6 to M24.")]
    [InlineData("SAE 5.1", "3/4-10 UNC", "SAE 5.1 is not held at 3/4-10 UNC; held: No. 4 to 5/8 in.")]
    [InlineData("SAE 5", "No. 10-24 UNC", "SAE 5 is not held at No. 10-24 UNC; held: 1/4 to 1 in; over 1 to 1-1/2 in.")]
    [InlineData("SAE 5", "M12", "SAE 5 is not held at M12")]
    [InlineData("ISO 8.8", "1/2-13 UNC", "ISO 8.8 is not held at 1/2-13 UNC")]
    public void GradeStrength_OffTheTable_SaysWhatIsHeld(string grade, string thread, string message)
    {
        BoltGrade held = BoltGrade.Parse(grade);
        ScrewThread size = ScrewThread.Parse(thread);
        Assert.False(held.TryAt(size, out GradeStrength? strength));
        Assert.Null(strength);
        Assert.False(BoltStrength.TryOf(held, size, out _));
        Assert.Contains(message, Assert.Throws<ArgumentException>(() => held.At(size)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => FastenerMaterial.Graded(held, size));
    }

    [Theory]
    [InlineData(6.0, 74, "SAE J429 Table 1: 6 in and shorter")]
    [InlineData(6.001, 60, "SAE J429 Table 1: longer bolts take grade 1 values")]
    [InlineData(1.5, 74, "SAE J429 Table 1: 6 in and shorter")]
    public void Grade2_OverSixInches_TakesGrade1Values(double inches, double ksi, string source)
    {
        GradeStrength strength = SaeJ429.Grade2.At(ScrewThread.Parse("1/2-13 UNC"), Length.FromInches(inches));
        Assert.True(Math.Abs(strength.MinimumTensile.Value - ksi) < 1e-9, source);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void GradeStrength_LengthNotPositive_IsRefused(double inches)
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(
            () => SaeJ429.Grade5.At(ScrewThread.Parse("1/2-13 UNC"), Length.FromInches(inches)));
        Assert.Contains("Bolt length must be a finite value above 0 m", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade8_2_ConflictingHardness_HighEndIsTheWorstCase()
    {
        StressBand tensile = SaeJ429.Grade8_2.Ranges[0].Strength.Tensile;

        // HRC 42 in the older text: ASTM A370 gives 194 ksi = 1338 MPa, printed to 1 ksi.
        Assert.Equal(1338, tensile.High!.Value.Megapascals, 3.45);
        Assert.Equal(2, SaeJ429.Grade8_2.Conflicts.Count);
    }

    [Fact]
    public void A490_TensileMaximum_IsThatOfItsSpecification()
    {
        StressBand tensile = AstmBolts.A490.Ranges[0].Strength.Tensile;
        Assert.Equal(173, tensile.High!.Value.KilopoundsForcePerSquareInch, 6);
        Assert.Equal(BasisKind.Published, tensile.Basis.High.Kind);
    }

    [Theory]
    [InlineData("SAE 2", 614, "HRB 80 to 100, middle HRB 90: ASTM A370 Table 3, 89 ksi")]
    [InlineData("SAE 1", 565, "HRB 70 to 100, middle HRB 85: ASTM A370 Table 3, 82 ksi")]
    [InlineData("ISO 4.6", 545, "HV 120 to 220, middle HV 170: DIN 50150, 545 MPa")]
    [InlineData("ISO 5.8", 610, "HV 160 to 220, middle HV 190: DIN 50150, 610 MPa")]
    [InlineData("ISO 8.8", 915, "HV 250 to 320, middle HV 285: DIN 50150, 915 MPa")]
    [InlineData("ASTM F1554 36", 475.7, "58 to 80 ksi, middle 69 ksi = 475.7 MPa")]
    public void Expected_OfAGrade_IsTheMiddleOfWhatItPermits(string grade, double mpa, string source)
    {
        StressBand tensile = BoltGrade.Parse(grade).Ranges[0].Strength.Tensile;
        Assert.True(Math.Abs(tensile.Expected!.Value.Megapascals - mpa) <= 0.6, source + ": " + tensile);
        Assert.Equal(BasisKind.CommonPractice, tensile.Basis.Expected.Kind);
    }
}
