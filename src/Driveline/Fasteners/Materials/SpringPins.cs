using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>The spring pins and dowels held: size and minimum shear load as printed, in mm and kN or in inches and lbf.</summary>
internal static class SpringPins
{
    private const string Steel = "spring steel";

    private const string Austenitic = "austenitic stainless steel";

    private const string BerylliumCopper = "beryllium copper";

    private static readonly Basis Iso8752Seen =
        Basis.CommonPractice("ISO 8752, minimum double shear load, edition not stated").ReadVia("two pin data pages that agree");

    private static readonly Basis Iso8752Austenitic =
        Basis.CommonPractice("ISO 8752, minimum double shear load, austenitic steel, edition not stated")
            .ReadVia("a distributor data page");

    private static readonly Basis Iso8752Memory = Basis.FromMemory("ISO 8752 Table 1, sizes off the data pages");

    private static readonly Basis CoiledSeen =
        Basis.CommonPractice("ISO 8748, minimum double shear load, edition not stated").ReadVia("a pin data page");

    private static readonly Basis CoiledLightSeen =
        Basis.CommonPractice("ISO 8751, minimum double shear load, edition not stated").ReadVia("a pin data page");

    private static readonly Basis Iso8750Memory = Basis.FromMemory("ISO 8750:2007 Table 1");

    private static readonly Basis Iso13337Memory = Basis.FromMemory("ISO 13337 Table 1");

    private static readonly Basis InchSlotted =
        Basis.Published("ASME B18.8.2", "2000, reaffirmed 2010", "slotted spring pins, double shear load")
            .ReadVia("Machinery's Handbook, 31st edition, p. 1895, Table 10");

    private static readonly Basis InchDowel =
        Basis.Published("ASME B18.8.2", "2000", "hardened ground machine dowel pins, single shear load")
            .ReadVia("a distributor data sheet");

    public static readonly IReadOnlyList<SpringPin> All =
    [
        .. Metric(SpringPinKind.SlottedHeavy, "ISO 8752", Steel, Iso8752Seen, 2,
            [(1, 0.7), (1.5, 1.58), (2, 2.82), (2.5, 4.38), (3, 6.32), (3.5, 9.06), (4, 11.24), (4.5, 15.36), (5, 17.54), (6, 26.04),
                (8, 42.76), (10, 70.16), (12, 104.1), (14, 144.7), (16, 171.0), (18, 222.5), (20, 280.6)]),
        .. Metric(SpringPinKind.SlottedHeavy, "ISO 8752", Steel, Iso8752Memory, 2,
            [(13, 115.1), (21, 298.2), (25, 438.5), (28, 542.6), (30, 631.4), (32, 684), (35, 859), (38, 1003), (40, 1068), (45, 1360),
                (50, 1685)]),
        .. Metric(SpringPinKind.SlottedHeavy, "ISO 8752", Austenitic, Iso8752Austenitic, 2,
            [(1.5, 0.98), (2, 1.81), (2.5, 2.84), (3, 4.07), (3.5, 5.8), (4, 7.25), (5, 10.75), (8, 26.46)]),
        .. Metric(SpringPinKind.CoiledHeavy, "ISO 8748", Steel, CoiledSeen, 2,
            [(2, 3.5), (2.5, 5.5), (3, 7.6), (3.5, 10), (4, 13.5), (5, 20), (6, 30), (8, 53), (10, 84), (12, 120), (14, 165), (16, 210),
                (20, 340)]),
        .. Metric(SpringPinKind.CoiledLight, "ISO 8751", Steel, CoiledLightSeen, 2,
            [(2, 1.5), (2.5, 2.3), (3, 3.3), (3.5, 4.5), (4, 5.7), (5, 9), (6, 13), (8, 23)]),
        .. Metric(SpringPinKind.CoiledLight, "ISO 8751", Austenitic, CoiledLightSeen, 2,
            [(2, 1.1), (2.5, 1.8), (3.5, 3.4), (4, 4.4), (5, 7), (6, 10), (8, 18)]),
        .. Metric(SpringPinKind.CoiledStandard, "ISO 8750", Steel, Iso8750Memory, 2,
            [(1.5, 1.45), (2, 2.5), (2.5, 3.9), (3, 5.5), (3.5, 7.5), (4, 9.6), (5, 15), (6, 22), (8, 39), (10, 62), (12, 89), (14, 120),
                (16, 155), (20, 250)]),
        .. Metric(SpringPinKind.SlottedLight, "ISO 13337", Steel, Iso13337Memory, 2,
            [(2, 1.5), (2.5, 2.4), (3, 3.5), (3.5, 4.6), (4, 8), (4.5, 8.8), (5, 10.4), (6, 18), (8, 24), (10, 40), (12, 48), (14, 84),
                (16, 98), (20, 158)]),
        .. Inch(SpringPinKind.SlottedInch, "ASME B18.8.2", Steel, InchSlotted, 2,
            [("1/16", 430), ("5/64", 800), ("3/32", 1150), ("1/8", 1875), ("9/64", 2175), ("5/32", 2750), ("3/16", 4150), ("7/32", 5850),
                ("5/16", 10800), ("3/8", 16300), ("7/16", 19800), ("1/2", 27100), ("5/8", 46000)]),
        .. Inch(SpringPinKind.SlottedInch, "ASME B18.8.2", Austenitic, InchSlotted, 2,
            [("1/16", 250), ("5/64", 460), ("3/32", 670), ("9/64", 1260), ("5/32", 1600), ("3/16", 2425), ("7/32", 3400), ("1/4", 4100),
                ("5/16", 6300), ("3/8", 9500), ("7/16", 11500), ("1/2", 15800), ("5/8", 18800)]),
        .. Inch(SpringPinKind.SlottedInch, "ASME B18.8.2", BerylliumCopper, InchSlotted, 2,
            [("1/16", 270), ("5/64", 500), ("3/32", 710), ("1/8", 1170), ("9/64", 1350), ("5/32", 1725), ("3/16", 2600), ("7/32", 3650),
                ("1/4", 4400), ("3/8", 10200), ("7/16", 12300), ("1/2", 17000)]),
        .. Inch(SpringPinKind.HardenedDowel, "ASME B18.8.2", Steel, InchDowel, 1,
            [("1/8", 1600), ("3/16", 3600), ("1/4", 6400), ("5/16", 10000), ("3/8", 14350), ("7/16", 19550), ("1/2", 25500), ("5/8", 39900),
                ("3/4", 57000), ("7/8", 78000), ("1", 102000)]),
    ];

    private static IEnumerable<SpringPin> Metric(
        SpringPinKind kind, string standard, string material, Basis basis, int planes, (double Millimeters, double Kilonewtons)[] rows) =>
        rows.Select(r => new SpringPin(
            kind, standard, FormattableString.Invariant($"{r.Millimeters} mm"), r.Millimeters / 1000, material, FamilyOf(material),
            new Sourced(r.Kilonewtons, "kN", basis), planes));

    private static IEnumerable<SpringPin> Inch(
        SpringPinKind kind, string standard, string material, Basis basis, int planes, (string Size, double PoundsForce)[] rows) =>
        rows.Select(r => new SpringPin(
            kind, standard, r.Size + " in", SpringPinText.InchFraction(r.Size) * Si.Inch,
            kind == SpringPinKind.HardenedDowel ? "hardened steel" : material, FamilyOf(material),
            new Sourced(r.PoundsForce, "lbf", basis), planes));

    private static MaterialFamily FamilyOf(string material) => material switch
    {
        Austenitic => MaterialFamily.StainlessSteel,
        BerylliumCopper => MaterialFamily.CopperAlloy,
        _ => MaterialFamily.SpringSteel,
    };
}
