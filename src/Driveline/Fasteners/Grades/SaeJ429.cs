using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Grades of SAE J429, inch bolts, screws and studs to 1 1/2 in. Figures in ksi as printed.</summary>
public static class SaeJ429
{
    private const string Standard = "SAE J429";

    private static readonly Basis Table1 =
        Basis.Published("SAE J429, in Mechanical Engineering Design", "5th ed., 1989", "SAE specifications for steel bolts, p. 341")
            .ReadVia("a university course page");

    private static readonly Basis Chart =
        Basis.CommonPractice("SAE J429, mechanical requirements, edition not stated").ReadVia("trade pages that agree");

    private static readonly Basis EditionJ =
        Basis.Published("ANSI/SAE J429", "edition j", "mechanical requirements").ReadVia("a machine-design textbook");

    /// <summary>Grade 1: low or medium carbon steel.</summary>
    public static BoltGrade Grade1 { get; } = new(
        Standard, "1", "SAE 1", "no grade mark", MaterialFamily.MildSteel, ShearClass.Soft46,
        Row(SizeRange.Inches(0.25, 1.5, "1/4 to 1-1/2 in"), 33, 36, 60, RockwellB(70, 100), Table1));

    /// <summary>Grade 2: low or medium carbon steel. Bolts over 6 in long take the values of grade 1.</summary>
    public static BoltGrade Grade2 { get; } = new BoltGrade(
        Standard, "2", "SAE 2", "no grade mark", MaterialFamily.MildSteel, ShearClass.ColdHeaded,
        Row(SizeRange.Inches(0.25, 0.75, "1/4 to 3/4 in"), 55, 57, 74, RockwellB(80, 100), Table1)
            .WithConflict(
                "minimum tensile strength", Ksi(74, Table1), Ksi(72, Basis.CommonPractice("one distributor page; taken as a misprint"))),
        Row(SizeRange.InchesOver(0.75, 1.5, "over 3/4 to 1-1/2 in"), 33, 36, 60, RockwellB(70, 100), Table1)).WithLongBolts(6, Grade1);

    /// <summary>Grade 4: medium carbon steel, cold drawn; studs.</summary>
    public static BoltGrade Grade4 { get; } = new(
        Standard, "4", "SAE 4", "no grade mark (studs)", MaterialFamily.ColdWorkedMildSteel, ShearClass.ColdWorked68,
        Row(SizeRange.Inches(0.25, 1.5, "1/4 to 1-1/2 in"), 65, 100, 115, RockwellC(22, 32), EditionJ));

    /// <summary>Grade 5: medium carbon steel, quenched and tempered.</summary>
    public static BoltGrade Grade5 { get; } = new(
        Standard, "5", "SAE 5", "3 radial lines, 120° apart", MaterialFamily.QuenchedSteel, ShearClass.Quenched88,
        Row(SizeRange.Inches(0.25, 1, "1/4 to 1 in"), 85, 92, 120, RockwellC(25, 34), Table1)
            .WithConflict("proof stress", Ksi(85, Table1), Ksi(65, Basis.CommonPractice("one distributor extract; taken as a misprint"))),
        Row(SizeRange.InchesOver(1, 1.5, "over 1 to 1-1/2 in"), 74, 81, 105, RockwellC(19, 30), Table1));

    /// <summary>Grade 5.1: low or medium carbon steel, quenched and tempered; screws with captive washers.</summary>
    public static BoltGrade Grade5_1 { get; } = new(
        Standard, "5.1", "SAE 5.1", "3 radial lines as an upside-down T", MaterialFamily.QuenchedSteel, ShearClass.Quenched88,
        Row(SizeRange.Inches(0.112, 0.625, "No. 4 to 5/8 in"), 85, null, 120, RockwellC(25, 40), Chart));

    /// <summary>Grade 5.2: low carbon boron steel, quenched and tempered.</summary>
    public static BoltGrade Grade5_2 { get; } = new(
        Standard, "5.2", "SAE 5.2", "3 radial lines grouped in one half", MaterialFamily.QuenchedSteel, ShearClass.Quenched88,
        Row(SizeRange.Inches(0.25, 1, "1/4 to 1 in"), 85, 92, 120, RockwellC(26, 36), Table1));

    /// <summary>Grade 7: medium carbon alloy steel, quenched and tempered; no longer in current editions.</summary>
    public static BoltGrade Grade7 { get; } = new(
        Standard, "7", "SAE 7", "5 radial lines, 72° apart", MaterialFamily.QuenchedSteel, ShearClass.Quenched98,
        Row(SizeRange.Inches(0.25, 1.5, "1/4 to 1-1/2 in"), 105, 115, 133, RockwellC(28, 34), EditionJ));

    /// <summary>Grade 8: medium carbon alloy steel, quenched and tempered.</summary>
    public static BoltGrade Grade8 { get; } = new(
        Standard, "8", "SAE 8", "6 radial lines, 60° apart", MaterialFamily.QuenchedSteel, ShearClass.Quenched109,
        Row(SizeRange.Inches(0.25, 1.5, "1/4 to 1-1/2 in"), 120, 130, 150, RockwellC(33, 39), Table1));

    /// <summary>Grade 8.1: drawn at elevated temperature; studs.</summary>
    public static BoltGrade Grade8_1 { get; } = new(
        Standard, "8.1", "SAE 8.1", "no grade mark (studs)", MaterialFamily.QuenchedSteel, ShearClass.Quenched109,
        Row(SizeRange.Inches(0.25, 1.5, "1/4 to 1-1/2 in"), 120, 130, 150, RockwellC(32, 38), EditionJ));

    /// <summary>
    /// Grade 8.2: low carbon boron steel, quenched and tempered. Old stock may be as hard as HRC 42, which sets the high end.
    /// </summary>
    public static BoltGrade Grade8_2 { get; } = new(
        Standard, "8.2", "SAE 8.2", "6 radial lines grouped", MaterialFamily.QuenchedSteel, ShearClass.Quenched109,
        Row(SizeRange.Inches(0.25, 1, "1/4 to 1 in"), 120, 130, 150, RockwellC(33, 39), Table1)
            .WithWorstHardness(new Sourced(42, "HRC", EditionJ))
            .WithConflict("maximum core hardness", new Sourced(42, "HRC", EditionJ), new Sourced(39, "HRC", Chart))
            .WithConflict("minimum core hardness", new Sourced(33, "HRC", Chart), new Sourced(35, "HRC", EditionJ)));

    /// <summary>Every grade held, weakest first.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
        [Grade1, Grade2, Grade4, Grade5, Grade5_1, Grade5_2, Grade7, Grade8, Grade8_1, Grade8_2];

    private static GradeRange Row(SizeRange sizes, double proof, double? yield, double tensile, HardnessRange hardness, Basis basis) =>
        GradeRange.Of(sizes, "ksi", proof, yield, tensile, hardness, basis)
            .WithHardnessOf(ReferenceEquals(basis, Table1) ? Chart : basis);

    private static HardnessRange RockwellB(double low, double high) => HardnessRange.Of(HardnessScale.RockwellB, low, high);

    private static HardnessRange RockwellC(double low, double high) => HardnessRange.Of(HardnessScale.RockwellC, low, high);

    private static Sourced Ksi(double value, Basis basis) => new(value, "ksi", basis);
}
