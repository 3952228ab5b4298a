using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>The PTO types held here, with every power limit found for each.</summary>
/// <remarks>
/// Geometry and speed: ISO 500-1:2014 clauses 4.1 to 4.3 as read in public copies. All power limits of the standard are
/// remembered: no printed table was at hand. Root diameters: 0.85 D and a remembered figure (type 1); m (z − 1.35) for the
/// 16/32 and 12/24 involute forms and m (z − 1.5) for type 4.
/// </remarks>
internal static class PtoTypes
{
    private static readonly Basis Geometry =
        Basis.Published("ISO 500-1", "2014", "clauses 4.1 to 4.3").ReadVia("public preview of the clauses and an open encyclopedia table");

    private static readonly Basis Edition2014 = Basis.FromMemory("ISO 500-1:2014 Table 1, power limit");

    private static readonly Basis Edition2004 = Basis.FromMemory("ISO 500-1:2004, power limit");

    private static readonly Basis Edition1991 = Basis.FromMemory("ISO 500:1991 and DIN 9611, power limit");

    private static readonly Basis S203 = Basis.FromMemory("ASAE S203 as quoted in textbooks, upper end of its power bracket");

    private static readonly PtoType[] Types =
    [
        new(1, 35, 6, SplineForm.Straight, 540, Geometry, Root1(),
        [
            Standard(1, 60, 540, Edition2014),
            Standard(1, 60, 540, Edition2004),
            Standard(1, 48, 540, Edition1991),
            Standard(1, 65, 540, S203),
            Manual(1, 56, 540, "utility tractor with reversible stub"),
            Manual(1, 60, 540, "130-hp class tractor"),
            Manual(1, 55.9, 540, "mid-range tractor"),
        ]),
        new(2, 35, 21, SplineForm.Involute, 1000, Geometry, Root("m (z − 1.35), m 1.5875 mm, z 21", 31.19),
        [
            Standard(2, 115, 1000, Edition2014),
            Standard(2, 115, 1000, Edition2004),
            Standard(2, 92, 1000, Edition1991),
            Manual(2, 86, 1000, "utility tractor with reversible stub"),
        ]),
        new(3, 45, 20, SplineForm.Involute, 1000, Geometry, Root("m (z − 1.35), m 2.1167 mm, z 20", 39.48),
        [
            Standard(3, 275, 1000, Edition2014),
            Standard(3, 275, 1000, Edition2004),
            Standard(3, 185, 1000, Edition1991),
            Standard(3, 190, 1000, S203),
        ]),
        new(4, 57.5, 22, SplineForm.Involute, 1300, Geometry, Root("m (z − 1.5), m 2.5 mm, z 22", 51.25),
        [
            Standard(4, 450, 1300, Edition2014),
        ]),
    ];

    /// <summary>All types, in order of their numbers.</summary>
    public static IReadOnlyList<PtoType> All { get; } = Array.AsReadOnly(Types);

    /// <summary>The type of that number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 1 to 4; the message lists what is held.</exception>
    public static PtoType Of(int number) => TryOf(number, out PtoType? type)
        ? type!
        : throw new ArgumentOutOfRangeException(
            nameof(number), FormattableString.Invariant($"PTO type must be from 1 to 4; got {number}. Held: {string.Join("; ", All)}."));

    /// <summary>The type of that number; false when none is held.</summary>
    public static bool TryOf(int number, [NotNullWhen(true)] out PtoType? type)
    {
        type = number >= 1 && number <= Types.Length ? Types[number - 1] : null;
        return type is not null;
    }

    private static PtoLimit Standard(int type, double kilowatts, double speed, Basis basis) =>
        new(type, PtoLimitKind.Standard, kilowatts, speed, conflicts: type < 4, basis);

    private static PtoLimit Manual(int type, double kilowatts, double speed, string tractor) =>
        new(type, PtoLimitKind.TractorManual, kilowatts, speed, conflicts: true,
            Basis.Published("operator manual, " + tractor, "undated", "PTO section"));

    private static LengthBand Root(string rule, double millimeters) =>
        LengthBand.Exactly(Length.FromMillimeters(millimeters), Basis.FromMemory("spline root circle by the form rule " + rule));

    // Two readings: 28.91 mm (DIN 9611, remembered) and 0.85 × 34.93 mm = 29.69 mm (SAE 6B form).
    private static LengthBand Root1() => LengthBand.Between(
        Length.FromMillimeters(28.91),
        Length.FromMillimeters(28.91),
        Length.FromMillimeters(29.69),
        new BandBasis(
            Basis.FromMemory("spline root circle, DIN 9611"),
            Basis.FromMemory("spline root circle, DIN 9611"),
            Basis.FromMemory("spline root circle 0.85 D, SAE 6B form"),
            BandEnd.Interval95,
            BandEnd.Interval95));
}
