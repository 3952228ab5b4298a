using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Bolts and rods of ASTM specifications, inch sizes. Figures in ksi as printed.</summary>
internal static class AstmBolts
{
    private static readonly Basis Textbook1989 =
        Basis.Published("ASTM bolts, in Mechanical Engineering Design", "5th ed., 1989", "table ASTM specifications for steel bolts")
            .ReadVia("a university course page");

    private static readonly Basis TextbookTable =
        Basis.CommonPractice("table of bolt specifications, edition not stated").ReadVia("a machine-design textbook");

    /// <summary>A307 A: low-carbon bolt; no tensile maximum, only a hardness maximum.</summary>
    public static BoltGrade A307A { get; } = new(
        "ASTM A307", "A", "ASTM A307 A", "307A, often left off", MaterialFamily.MildSteel, ShearClass.Soft46,
        Row("A307", QuarterTo(4, "1/4 to 4 in"), null, null, 60, RockwellB(69, 100)));

    /// <summary>A307 B: low-carbon bolt for flanged pipe joints; one of the few with a tensile maximum.</summary>
    public static BoltGrade A307B { get; } = new(
        "ASTM A307", "B", "ASTM A307 B", "307B", MaterialFamily.MildSteel, ShearClass.Soft46,
        Row("A307", QuarterTo(4, "1/4 to 4 in"), null, null, 60, RockwellB(69, 95)).WithMaximum(Ksi(100, Chart("A307"))));

    /// <summary>A307 C: low-carbon anchor rod, now F1554 grade 36.</summary>
    public static BoltGrade A307C { get; } = new(
        "ASTM A307", "C", "ASTM A307 C", "no head (rod)", MaterialFamily.MildSteel, ShearClass.Soft46,
        Row("A307", QuarterTo(4, "1/4 to 4 in"), null, 36, 58, null).WithMaximum(Ksi(80, Chart("A307"))));

    /// <summary>F1554 grade 36: anchor rod with a tensile maximum.</summary>
    public static BoltGrade F1554Grade36 { get; } = new(
        "ASTM F1554", "36", "ASTM F1554 36", "no head (rod)", MaterialFamily.MildSteel, ShearClass.Soft46,
        Row("F1554", SizeRange.Inches(0.5, 4, "1/2 to 4 in"), null, 36, 58, null).WithMaximum(Ksi(80, Chart("F1554"))));

    /// <summary>F1554 grade 55: anchor rod with a tensile maximum.</summary>
    public static BoltGrade F1554Grade55 { get; } = new(
        "ASTM F1554", "55", "ASTM F1554 55", "no head (rod)", MaterialFamily.MildSteel, ShearClass.Soft56,
        Row("F1554", SizeRange.Inches(0.5, 4, "1/2 to 4 in"), null, 55, 75, null).WithMaximum(Ksi(95, Chart("F1554"))));

    /// <summary>A449 type 1: medium carbon steel, quenched and tempered; as SAE 5.</summary>
    public static BoltGrade A449 { get; } = new(
        "ASTM A449", "type 1", "ASTM A449", "A449; older stock 3 radial lines", MaterialFamily.QuenchedSteel, ShearClass.Quenched88,
        Old("A449", QuarterTo(1, "1/4 to 1 in"), 85, 92, 120, RockwellC(25, 34)),
        Old("A449", SizeRange.InchesOver(1, 1.5, "over 1 to 1-1/2 in"), 74, 81, 105, RockwellC(19, 30)),
        Old("A449", SizeRange.InchesOver(1.5, 3, "over 1-1/2 to 3 in"), 55, 58, 90, RockwellB(91, 100)));

    /// <summary>F3125 grade A325, 2014 on: structural bolt. Copies disagree on its hardness; the wider range is used.</summary>
    public static BoltGrade A325 { get; } = new(
        "ASTM F3125", "A325", "ASTM A325", "A325", MaterialFamily.QuenchedSteel, ShearClass.Quenched88,
        Row("F3125", SizeRange.Inches(0.5, 1.5, "1/2 to 1-1/2 in"), 85, 92, 120, RockwellC(24, 35))
            .WithWorstHardness(new Sourced(35, "HRC", A325Hardness))
            .WithConflict("maximum core hardness", new Sourced(35, "HRC", A325Hardness), new Sourced(34, "HRC", A325Hardness)));

    /// <summary>A325 before 2014, over 1 in: weaker than the current one.</summary>
    public static BoltGrade A325Before2014 { get; } = new(
        "ASTM A325", "before 2014", "ASTM A325 before 2014", "A325", MaterialFamily.QuenchedSteel, ShearClass.Quenched88,
        Old("A325", SizeRange.InchesOver(1, 1.5, "over 1 to 1-1/2 in"), 74, 81, 105, RockwellC(19, 31)));

    /// <summary>F3125 grade A490: structural bolt; its tensile maximum is remembered, not seen.</summary>
    public static BoltGrade A490 { get; } = new(
        "ASTM F3125", "A490", "ASTM A490", "A490", MaterialFamily.QuenchedSteel, ShearClass.Quenched109,
        GradeRange.Of(SizeRange.Inches(0.5, 1.5, "1/2 to 1-1/2 in"), "ksi", 120, 130, 150, RockwellC(33, 38), Textbook1989)
            .WithHardnessOf(TextbookTable).WithMaximum(Ksi(173, A490Maximum)));

    /// <summary>A354 BC: alloy steel, quenched and tempered.</summary>
    public static BoltGrade A354Bc { get; } = new(
        "ASTM A354", "BC", "ASTM A354 BC", "BC", MaterialFamily.QuenchedSteel, ShearClass.Quenched98,
        Row("A354", QuarterTo(2.5, "1/4 to 2-1/2 in"), 105, 109, 125, RockwellC(26, 36)));

    /// <summary>A354 BD: alloy steel, quenched and tempered; as SAE 8.</summary>
    public static BoltGrade A354Bd { get; } = new(
        "ASTM A354", "BD", "ASTM A354 BD", "BD, sometimes with 6 radial lines", MaterialFamily.QuenchedSteel, ShearClass.Quenched109,
        GradeRange.Of(QuarterTo(2.5, "1/4 to 2-1/2 in"), "ksi", 120, 130, 150, RockwellC(33, 39), Textbook1989)
            .WithHardnessOf(TextbookTable));

    /// <summary>A574: socket head cap screw.</summary>
    public static BoltGrade A574 { get; } = new(
        "ASTM A574", "socket head cap screw", "ASTM A574", "knurled socket head", MaterialFamily.QuenchedSteel, ShearClass.Quenched129,
        GradeRange.Of(SizeRange.Inches(0.06, 0.5, "No. 0 to 1/2 in"), "ksi", 140, 153, 180, RockwellC(39, 45), A574Basis)
            .WithConflict("minimum yield strength", Ksi(153, A574Basis), Ksi(160, TextbookTable)),
        GradeRange.Of(SizeRange.InchesOver(0.5, 1.5, "over 1/2 to 1-1/2 in"), "ksi", 135, 153, 170, RockwellC(37, 45), A574Basis)
            .WithConflict("minimum yield strength", Ksi(153, A574Basis), Ksi(160, TextbookTable)));

    /// <summary>Every specification held.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
        [A307A, A307B, A307C, F1554Grade36, F1554Grade55, A449, A325, A325Before2014, A490, A354Bc, A354Bd, A574];

    private static Basis A325Hardness =>
        Basis.FromMemory("ASTM F3125 grade A325: one chart prints HRC 24 to 35, the specification is remembered as 25 to 34");

    private static Basis A490Maximum => Basis.Published("ASTM A490", "2011", "1.1, tensile strength of 150 to 173 ksi")
        .ReadVia("a public copy of its first page");

    private static Basis A574Basis =>
        Basis.Published("ASTM A574", "2013", "mechanical requirements").ReadVia("a public technical page");

    private static Basis Chart(string specification) =>
        Basis.CommonPractice("ASTM " + specification + ", mechanical requirements, edition not stated")
            .ReadVia("a trade identification-marking chart");

    private static GradeRange Row(
        string specification, SizeRange sizes, double? proof, double? yield, double tensile, HardnessRange? hardness) =>
        GradeRange.Of(sizes, "ksi", proof, yield, tensile, hardness, Chart(specification));

    private static SizeRange QuarterTo(double inches, string text) => SizeRange.Inches(0.25, inches, text);

    private static GradeRange Old(
        string specification, SizeRange sizes, double proof, double yield, double tensile, HardnessRange hardness) =>
        GradeRange.Of(sizes, "ksi", proof, yield, tensile, hardness, Textbook1989).WithHardnessOf(Chart(specification));

    private static HardnessRange RockwellB(double low, double high) => HardnessRange.Of(HardnessScale.RockwellB, low, high);

    private static HardnessRange RockwellC(double low, double high) => HardnessRange.Of(HardnessScale.RockwellC, low, high);

    private static Sourced Ksi(double value, Basis basis) => new(value, "ksi", basis);
}
