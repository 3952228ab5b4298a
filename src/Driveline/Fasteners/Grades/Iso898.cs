using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Property classes of ISO 898-1, metric bolts, screws and studs to M39. Figures in MPa as printed.</summary>
/// <remarks>
/// Below class 8.8 the core hardness has a maximum of HV 220 (HV 250 for 6.8), yet the end of a fastener may read up to HV 250.
/// The high end of the band uses the core maximum, because the shear plane runs through the core.
/// </remarks>
public static class Iso898
{
    private const string Standard = "ISO 898-1";

    private static readonly Basis Table3 =
        Basis.Published(Standard, "2013", "Table 3").ReadVia("three technical pages that agree");

    private static readonly Basis Table1999 =
        Basis.Published(Standard, "1999", "Table 3").ReadVia("a technical page");

    /// <summary>Class 3.6: withdrawn in 2009; old stock only.</summary>
    public static BoltGrade Class3_6 { get; } = Soft("3.6", MaterialFamily.MildSteel, ShearClass.Soft46, 180, 190, 330, 95, 220, Table1999);

    /// <summary>Class 4.6: mild steel.</summary>
    public static BoltGrade Class4_6 { get; } = Soft("4.6", MaterialFamily.MildSteel, ShearClass.Soft46, 225, 240, 400, 120, 220, Table3);

    /// <summary>Class 4.8: mild steel, cold worked.</summary>
    public static BoltGrade Class4_8 { get; } = Soft(
        "4.8", MaterialFamily.ColdWorkedMildSteel, ShearClass.ColdWorked48, 310, 340, 420, 130, 220, Table3);

    /// <summary>Class 5.6: mild steel.</summary>
    public static BoltGrade Class5_6 { get; } = Soft("5.6", MaterialFamily.MildSteel, ShearClass.Soft56, 280, 300, 500, 155, 220, Table3);

    /// <summary>Class 5.8: mild steel, cold worked.</summary>
    public static BoltGrade Class5_8 { get; } = Soft(
        "5.8", MaterialFamily.ColdWorkedMildSteel, ShearClass.ColdWorked58, 380, 420, 520, 160, 220, Table3);

    /// <summary>Class 6.8: mild steel, cold worked.</summary>
    public static BoltGrade Class6_8 { get; } = Soft(
        "6.8", MaterialFamily.ColdWorkedMildSteel, ShearClass.ColdWorked68, 440, 480, 600, 190, 250, Table3);

    /// <summary>Class 8.8: quenched and tempered; other limits over 16 mm. Structural bolts take the higher limits from 12 mm on.</summary>
    public static BoltGrade Class8_8 { get; } = Quenched(
        "8.8", ShearClass.Quenched88,
        Row(SizeRange.Millimeters(1.6, 16, "M1.6 to M16"), 580, 640, 800, 250, 320, Table3),
        Row(SizeRange.MillimetersOver(16, 39, "over M16 to M39"), 600, 660, 830, 255, 335, Table3));

    /// <summary>Class 9.8: quenched and tempered; to 16 mm only.</summary>
    public static BoltGrade Class9_8 { get; } = Quenched(
        "9.8", ShearClass.Quenched98,
        Row(SizeRange.Millimeters(1.6, 16, "M1.6 to M16"), 650, 720, 900, 290, 360, Table3));

    /// <summary>Class 10.9: quenched and tempered.</summary>
    public static BoltGrade Class10_9 { get; } = Quenched(
        "10.9", ShearClass.Quenched109,
        Row(Whole, 830, 940, 1040, 320, 380, Table3));

    /// <summary>Class 12.9: alloy steel, quenched and tempered.</summary>
    public static BoltGrade Class12_9 { get; } = Quenched(
        "12.9", ShearClass.Quenched129,
        Row(Whole, 970, 1100, 1220, 385, 435, Table3));

    /// <summary>Class 12.9 with the number underlined: lower tempering temperature, the same strength figures.</summary>
    public static BoltGrade Class12_9Underlined { get; } = Quenched(
        "12.9 underlined", ShearClass.Quenched129,
        Row(Whole, 970, 1100, 1220, 385, 435, Table3));

    /// <summary>Every class held, weakest first.</summary>
    public static IReadOnlyList<BoltGrade> All { get; } =
        [Class3_6, Class4_6, Class4_8, Class5_6, Class5_8, Class6_8, Class8_8, Class9_8, Class10_9, Class12_9, Class12_9Underlined];

    private static SizeRange Whole => SizeRange.Millimeters(1.6, 39, "M1.6 to M39");

    private static BoltGrade Soft(
        string name, MaterialFamily family, ShearClass shearClass, double proof, double yield, double tensile, double vickersLow,
            double vickersHigh, Basis basis) =>
        new(Standard, name, "ISO " + name, name + ", often left off", family, shearClass,
            Row(Whole, proof, yield, tensile, vickersLow, vickersHigh, basis));

    private static BoltGrade Quenched(string name, ShearClass shearClass, params GradeRange[] rows) =>
        new(Standard, name, "ISO " + name, name, MaterialFamily.QuenchedSteel, shearClass, rows);

    private static GradeRange Row(
        SizeRange sizes, double proof, double yield, double tensile, double vickersLow, double vickersHigh, Basis basis) =>
        GradeRange.Of(sizes, "MPa", proof, yield, tensile, HardnessRange.Of(HardnessScale.Vickers, vickersLow, vickersHigh), basis);
}
