using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.Tests.Fasteners;

public sealed class ScrewThreadPublished
{
    public static TheoryData<ReferenceRow> Inch =>
        ReferenceTable.Seen("fasteners", "threads-inch.csv", r => r["series"] is "UNC" or "UNF");

    public static TheoryData<ReferenceRow> Metric =>
        ReferenceTable.Seen("fasteners", "threads-metric.csv", r => r["series"] is "coarse" or "fine");

    public static TheoryData<ReferenceRow> Bodies => ReferenceTable.Seen("fasteners", "body-diameters.csv", _ => true);

    [Theory]
    [MemberData(nameof(Inch))]
    public void InchThread_EveryRow_HasThePrintedSizesAndAreas(ReferenceRow row)
    {
        var thread = UnifiedThread.Parse(row["designation"]);
        Assert.Equal(row["designation"], thread.Designation);
        Assert.Equal(row.Number("threads_per_in"), thread.ThreadsPerInch);
        Close.Digits(row.Number("major_dia_in"), thread.MajorDiameterM / 0.0254, 9);
        Close.Digits(row.Number("stress_area_in2"), thread.StressAreaM2 / (0.0254 * 0.0254), 9);

        // Printed to four decimals below 0.1 in², to three above.
        double printed = row.Number("minor_section_area_in2");
        Assert.InRange(thread.RootAreaM2 / (0.0254 * 0.0254), printed - Half(printed), printed + Half(printed) + RootSlack(row));
        double area = row.Number("stress_area_in2");
        Assert.InRange(
            thread.FormulaStressAreaM2 / (0.0254 * 0.0254), area - Half(area) - FormulaSlack(row), area + Half(area) + FormulaSlack(row));
    }

    [Theory]
    [MemberData(nameof(Metric))]
    public void MetricThread_EveryRow_HasThePrintedSizesAndAreas(ReferenceRow row)
    {
        var thread = MetricThread.Parse(row["designation"]);
        Assert.Equal(row["designation"], thread.Designation);
        Close.Digits(row.Number("pitch_mm"), thread.PitchM * 1000, 9);
        Close.Digits(row.Number("As_published_mm2"), thread.StressAreaM2 * 1e6, 9);
        Assert.Equal(row.Number("As_published_mm2"), thread.PublishedStressArea!.Value);
        Close.Digits(row.Number("d3_root_mm"), thread.MinorDiameterM * 1000, 3);
        if (row.Has("root_area_published_mm2"))
        {
            // The page gives two decimals, four for the smallest sizes.
            Close.Within(row.Number("root_area_published_mm2"), thread.RootAreaM2 * 1e6, 0.0051);
        }

        Assert.Equal(row["confidence"] == "memory" ? BasisKind.FromMemory : BasisKind.Published, thread.PublishedStressArea.Basis.Kind);
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public void BodyDiameter_EveryRow_HasThePrintedLimits(ReferenceRow row)
    {
        bool inch = row.Has("body_dia_max_in");
        var thread = ScrewThread.Parse(inch ? row["size"] + " in" : row["size"]);
        var band = thread.BodyDiameterOf(
            row["standard"].StartsWith("ASME B18.5", StringComparison.Ordinal) ? BodyStyle.SquareNeckBolt : BodyStyle.HexCapScrew)!;
        string unit = inch ? "in" : "mm";
        double meter = inch ? 0.0254 : 1e-3;
        Close.Digits(row.Number("body_dia_min_" + unit), band.SiBand.Low / meter, 9);
        Close.Digits(row.Number("body_dia_max_" + unit), band.SiBand.High / meter, 9);

        // The page of the Australian adoption of ISO 4014 shows no edition.
        BasisKind seen = row["standard"].StartsWith("ISO 4014", StringComparison.Ordinal) ? BasisKind.CommonPractice : BasisKind.Published;
        Assert.Equal(row["confidence"] == "memory" ? BasisKind.FromMemory : seen, band.WeakestBasis.Kind);
    }

    // Another handbook's table of the same areas, printed to four figures below 1/2 in and three above; its 1 1/2-12 repeats the area of
    // 1 3/8-12 and is left out. 1/2-20: 0.7854 · (0.5 − 1.299038/20)² = 0.14865, printed 0.1485; 7/8-14: 0.48055, printed 0.480.
    [Theory]
    [InlineData("No. 10-24 UNC", 0.0145, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1/4-20 UNC", 0.0269, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("5/16-18 UNC", 0.0454, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("3/8-16 UNC", 0.0678, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("7/16-14 UNC", 0.0933, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1/2-13 UNC", 0.1257, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("9/16-12 UNC", 0.162, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("5/8-11 UNC", 0.202, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("3/4-10 UNC", 0.302, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("7/8-9 UNC", 0.419, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1-8 UNC", 0.551, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1 1/4-7 UNC", 0.89, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1 1/2-6 UNC", 1.294, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("No. 10-32 UNF", 0.0175, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1/4-28 UNF", 0.0326, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("5/16-24 UNF", 0.0524, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("3/8-24 UNF", 0.0809, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("7/16-20 UNF", 0.109, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1/2-20 UNF", 0.1485, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("9/16-18 UNF", 0.189, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("5/8-18 UNF", 0.24, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("3/4-16 UNF", 0.351, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("7/8-14 UNF", 0.48, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1-12 UNF", 0.625, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    [InlineData("1 1/4-12 UNF", 1.024, "Mechanical Engineer's Data Handbook, 8.2.7, area at bottom of threads")]
    public void InchThread_AreaAtTheBottom_IsThePrinted(string thread, double squareInches, string source) => Close.Absolute(
        squareInches, ScrewThread.Parse(thread).RootAreaM2 / (0.0254 * 0.0254), squareInches < 0.15 ? 0.0002 : 0.0006, source);

    private static double Half(double printed) => printed < 0.1 ? 0.00005 : 0.0005;

    // 7/8-14 UNF is printed 0.480; the formula gives 0.48055, so the table cuts off where it should round up.
    private static double RootSlack(ReferenceRow row) => row["designation"] == "7/8-14 UNF" ? 0.0001 : 0;

    // 5/16-24 UNF is printed 0.0580; the formula gives 0.05807 (ASME B1.1 prints three figures there).
    private static double FormulaSlack(ReferenceRow row) => row["designation"] == "5/16-24 UNF" ? 0.00003 : 0;
}
