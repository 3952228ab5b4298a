using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>The facings held here, all against cast iron or steel.</summary>
/// <remarks>
/// Ranges printed for friction are kept as ranges. One printed value is spread by half a friction class (0.05),
/// at most a quarter of it; its ends are then common practice. Temperatures are kept in °C, pressures in kPa,
/// power in W/mm², as printed.
/// </remarks>
public static class Facings
{
    private const double Unknown = double.NaN;

    private static readonly Basis Handbook = Basis.Published("Tribology Handbook", "2nd ed.", "Table 7.4");
    private static readonly Basis Textbook = Basis.FromMemory(
        "machine-design textbook, tables of friction materials for brakes and clutches");
    private static readonly Basis FrictionCode = Basis.CommonPractice("SAE J866:2019 Table 1 as summarised on a public standards page");

    /// <summary>Woven lining, light duty.</summary>
    public static Facing WovenLining { get; } = Printed(
        "woven lining", 0.35, 0.40, 0.08, 175, 520, 150, 250, 0.3, 0.6, ThermalMaterials.WovenFacing);

    /// <summary>Millboard lining, light duty.</summary>
    public static Facing MillboardLining { get; } = Printed("millboard lining", 0.40, 0.40, Unknown, 175, 700, 150, 250, 0.3, 0.6, null);

    /// <summary>Wound tape and yarn, medium duty.</summary>
    public static Facing WoundLining { get; } = Printed(
        "wound tape and yarn", 0.40, 0.40, Unknown, 175, 700, 200, 350, 0.3, 1.2, ThermalMaterials.WovenFacing);

    /// <summary>Moulded organic lining, medium duty: the usual facing of a driveline slip clutch.</summary>
    public static Facing MouldedLining { get; } = Printed(
        "moulded organic lining", 0.35, 0.35, 0.04, 175, 700, 200, 350, 0.6, 1.2, ThermalMaterials.MouldedFacing);

    /// <summary>Sintered metal, heavy duty; the only dry facing with a printed static value, 0.36.</summary>
    public static Facing SinteredMetal { get; } =
        Printed("sintered metal", 0.30, 0.30, 0.05, 350, 2800, 300, 500, 1.7, 1.7, ThermalMaterials.SinteredFacing)
            .WithBreakaway(Facing.OnePrinted(0.36, Handbook));

    /// <summary>Cermet buttons, heavy duty; temperature limits from memory of another table.</summary>
    public static Facing CermetButtons { get; } = Facing.Listed(
        "cermet buttons",
        Facing.OnePrinted(0.40, Handbook),
        null,
        null,
        new FacingLimits(700e3, 1400e3, 399 + 273.15, 816 + 273.15, 4e6, 4e6),
        null,
        Textbook);

    /// <summary>A facing nobody can name: the friction of every facing held here, and the lowest limits among them.</summary>
    /// <remarks>Dry friction 0.10 (powdered metal) to 0.65 (friction code H), expected 0.35 (moulded organic).</remarks>
    public static Facing NotKnown { get; } = Facing.Listed(
        "facing not known",
        RatioBand.Between(0.10, 0.35, 0.65, BandBasis.Of(Textbook)),
        null,
        null,
        new FacingLimits(175e3, 345e3, 77 + 273.15, 110 + 273.15, 0.3e6, 0.3e6),
        null,
        Textbook);

    /// <summary>All named facings.</summary>
    public static IReadOnlyList<Facing> All { get; } =
    [
        WovenLining, MillboardLining, WoundLining, MouldedLining, SinteredMetal, CermetButtons, NotKnown,
        Remembered("cermet", 0.32, 0.32, Unknown, 1030, 399, 816),
        Remembered("sintered metal, textbook range", 0.29, 0.33, Unknown, 2070, 299, 499),
        Remembered("rigid moulded non-asbestos", 0.33, 0.63, Unknown, 689, 260, Unknown),
        Remembered("rigid moulded asbestos (old machines)", 0.35, 0.41, Unknown, 689, 177, 349),
        Remembered("rigid moulded asbestos pads (old machines)", 0.31, 0.49, Unknown, 5170, 227, 499),
        Remembered("semi-rigid moulded asbestos (old machines)", 0.37, 0.41, Unknown, 689, 149, 349),
        Remembered("flexible moulded asbestos (old machines)", 0.39, 0.45, Unknown, 689, 149, 349),
        Remembered("wound asbestos yarn and wire (old machines)", 0.38, 0.38, Unknown, 689, 149, 349),
        Remembered("woven asbestos yarn and wire (old machines)", 0.38, 0.38, Unknown, 689, 127, 260),
        Remembered("woven cotton", 0.47, 0.47, Unknown, 689, 76.7, 110),
        Remembered("cast iron on cast iron", 0.15, 0.20, 0.05, 1030, Unknown, 316),
        Remembered("powdered metal on cast iron", 0.1, 0.4, 0.05, 1030, Unknown, 538),
        Remembered("powdered metal on hard steel", 0.1, 0.3, 0.05, 2070, Unknown, 538),
        Remembered("impregnated asbestos (old machines)", 0.32, 0.32, 0.12, 1030, Unknown, 260),
        Remembered("carbon graphite on steel", 0.25, 0.25, 0.05, 2070, Unknown, 371),
    ];

    /// <summary>The facing of that name.</summary>
    /// <exception cref="ArgumentException">No facing of that name is held; the message lists those that are.</exception>
    public static Facing Named(string name) => TryNamed(name, out Facing? facing)
        ? facing!
        : throw new ArgumentException(
            "Facing \"" + name + "\" is not held here; held: " + string.Join("; ", All.Select(f => f.Name)) + ".", nameof(name));

    /// <summary>The facing of that name, letter case apart.</summary>
    public static bool TryNamed(string name, [NotNullWhen(true)] out Facing? facing)
    {
        Guard.NotNull(name, nameof(name));
        facing = All.FirstOrDefault(f => string.Equals(f.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
        return facing is not null;
    }

    /// <summary>The facing of a two-letter friction code: first letter cool friction, second letter hot friction.</summary>
    /// <remarks>
    /// C up to 0.15, D 0.15 to 0.25, E 0.25 to 0.35, F 0.35 to 0.45, G 0.45 to 0.55, H above 0.55 (sources disagree: open ended, or
    /// to 0.65; 0.65 is used here), Z not classified. The code says nothing about pressure or temperature limits.
    /// </remarks>
    /// <param name="code">Two letters as stamped on the facing's edge, e.g. "FE".</param>
    /// <exception cref="ArgumentException">Not two letters from C, D, E, F, G, H.</exception>
    /// <example>"FE": cool 0.35 to 0.45, hot 0.25 to 0.35.</example>
    public static Facing OfFrictionCode(string code)
    {
        Guard.NotNull(code, nameof(code));
        string letters = code.Trim().ToUpperInvariant();
        if (letters.Length != 2)
        {
            throw new ArgumentException("A friction code is two letters from C, D, E, F, G, H; got \"" + code + "\".", nameof(code));
        }

        return Facing.OfFriction("friction code " + letters, Class(letters[0], code)).WithHotFriction(Class(letters[1], code));
    }

    private static RatioBand Class(char letter, string code) => letter switch
    {
        'C' => RatioBand.Between(0, 0.10, 0.15, FrictionCode),
        'D' => Facing.PrintedRange(0.15, 0.25, FrictionCode),
        'E' => Facing.PrintedRange(0.25, 0.35, FrictionCode),
        'F' => Facing.PrintedRange(0.35, 0.45, FrictionCode),
        'G' => Facing.PrintedRange(0.45, 0.55, FrictionCode),
        'H' => Facing.PrintedRange(0.55, 0.65, FrictionCode),
        _ => throw new ArgumentException("A friction code is two letters from C, D, E, F, G, H; got \"" + code + "\".", nameof(code)),
    };

    private static Facing Printed(
        string name, double low, double high, double oiled, double lowKpa, double highKpa,
        double continuousC, double maximumC, double lowWPerMm2, double highWPerMm2, ThermalMaterial? thermal) => Facing.Listed(
            name,
            Friction(low, high, Handbook)!,
            null,
            Friction(oiled, oiled, Handbook),
            new FacingLimits(lowKpa * 1e3, highKpa * 1e3, continuousC + 273.15, maximumC + 273.15, lowWPerMm2 * 1e6, highWPerMm2 * 1e6),
            thermal,
            Handbook);

    private static Facing Remembered(
        string name, double low, double high, double oiled, double highKpa, double continuousC, double maximumC) =>
        Facing.Listed(
            name,
            Friction(low, high, Textbook)!,
            null,
            Friction(oiled, oiled, Textbook),
            new FacingLimits(Unknown, highKpa * 1e3, continuousC + 273.15, maximumC + 273.15, Unknown, Unknown),
            null,
            Textbook);

    private static RatioBand? Friction(double low, double high, Basis basis) =>
        double.IsNaN(low) ? null : low.Equals(high) ? Facing.OnePrinted(low, basis) : Facing.PrintedRange(low, high, basis);
}
