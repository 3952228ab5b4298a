using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>Shaft steels with the strengths of textbooks, standards and data sheets.</summary>
internal static class ShaftMaterials
{
    private static readonly Basis SaeHandbook =
        Basis.Published("SAE Handbook", "1986", "p. 2.15, estimated minimum strengths, 18 to 32 mm")
            .ReadVia("Mechanical Engineering Design, 9th ed., Table A-20, p. 1040");

    private static readonly Basis C45Normalized =
        Basis.Published("DIN EN 10083-2", "2006-10", "C45 normalized, over 16 to 100 mm").ReadVia("a data sheet of a key to steels");

    private static readonly Basis Tempered =
        Basis.CommonPractice("EN 10083, quenched and tempered, 16 to 40 mm (C45), 40 to 100 mm (42CrMo4), edition not stated")
            .ReadVia("data sheets of a steel maker");

    private static readonly Basis Structural =
        Basis.CommonPractice("EN 10025-2, Table 7, up to 16 mm, edition not stated").ReadVia("a public page with the table");

    private static readonly Basis SupplierMinimum =
        Basis.CommonPractice("estimated minimum strengths of carbon steel bars, two suppliers' tables");

    private static readonly Basis SingleHeats = Basis.CommonPractice("tensile properties of 4140 by treatment, a public page");

    private static readonly Basis Remembered = Basis.FromMemory("table of steel strengths: E355, drawn 1026 tube");

    // Other spellings, and what a name without a state means.
    private static readonly Dictionary<string, string> Aliases = new(StringComparer.Ordinal)
    {
        ["1020"] = "1020 hot rolled",
        ["1026"] = "1026 hot finished",
        ["1045"] = "1045 hot rolled",
        ["4140"] = "4140 annealed",
        ["c45"] = "C45 normalized",
        ["c45n"] = "C45 normalized",
        ["c45qt"] = "C45 quenched, tempered",
        ["42crmo4"] = "42CrMo4 annealed",
        ["42crmo4qt"] = "42CrMo4 quenched, tempered",
        ["s235jr"] = "S235",
        ["st37"] = "S235",
        ["s355jr"] = "S355",
        ["s355j2"] = "S355",
        ["st52"] = "E355",
    };

    /// <summary>1045, hot rolled: yield 310 MPa, tensile 565 MPa.</summary>
    public static SteelGrade HotRolled1045 { get; } = new("1045 hot rolled", 310, 565, SaeHandbook);

    /// <summary>1045, cold drawn: yield 530 MPa, tensile 627 MPa.</summary>
    public static SteelGrade ColdDrawn1045 { get; } = new("1045 cold drawn", 530, 627, SaeHandbook);

    /// <summary>4140, quenched and tempered at 650 °C: yield 655 MPa, tensile 758 MPa.</summary>
    public static SteelGrade Tempered650C4140 { get; } = new("4140 quenched, tempered 650 °C", 655, 758, SingleHeats);

    /// <summary>4140, quenched and tempered at 540 °C: yield 834 MPa, tensile 951 MPa.</summary>
    public static SteelGrade Tempered540C4140 { get; } = new("4140 quenched, tempered 540 °C", 834, 951, SingleHeats);

    /// <summary>4140, quenched and tempered at 425 °C: yield 1140 MPa, tensile 1250 MPa.</summary>
    public static SteelGrade Tempered425C4140 { get; } = new("4140 quenched, tempered 425 °C", 1140, 1250, SingleHeats);

    /// <summary>All of them, weakest first; the usual names of plain, tube and quenched steels beside those above.</summary>
    /// <remarks>A name without a state, such as "4140", means the weakest state in which that steel is sold for shafts and tubes.</remarks>
    public static IReadOnlyList<SteelGrade> All { get; } = Array.AsReadOnly(
    [
        new("1020 hot rolled", 207, 380, SaeHandbook),
        new("S235", 235, 360, Structural),
        new("1026 hot finished", 240, 440, SupplierMinimum),
        new("C45 normalized", 305, 580, C45Normalized),
        HotRolled1045,
        new("1020 cold drawn", 350, 420, SupplierMinimum),
        new("S355", 355, 470, Structural),
        new("E355", 355, 490, Remembered),
        new("4140 annealed", 415, 655, SingleHeats),
        new("42CrMo4 annealed", 415, 655, SingleHeats),
        new("C45 quenched, tempered", 430, 650, Tempered),
        new("1026 cold drawn", 480, 550, Remembered),
        ColdDrawn1045,
        new("42CrMo4 quenched, tempered", 650, 900, Tempered),
        Tempered650C4140,
        Tempered540C4140,
        Tempered425C4140,
    ]);

    /// <summary>
    /// What the yield strength of an unknown shaft steel may be: from the weakest to the strongest steel held here,
    /// 310 to 1140 MPa, expected 655 MPa.
    /// </summary>
    /// <remarks>A guess, marked as remembered: no yield or hardness of PTO stubs was found published.</remarks>
    public static StressBand NotKnown { get; } = StressBand.Between(
        Pressure.FromMegapascals(310),
        Pressure.FromMegapascals(655),
        Pressure.FromMegapascals(1140),
        new BandBasis(
            Basis.FromMemory("weakest shaft steel considered: 1045 hot rolled"),
            Basis.FromMemory("guess: a quenched and highly tempered alloy steel"),
            Basis.FromMemory("strongest shaft steel considered: 4140 tempered at 425 °C"),
            BandEnd.Interval95,
            BandEnd.Interval95));

    /// <summary>The steel of that name, ignoring case.</summary>
    /// <exception cref="ArgumentException">None is held by that name; the message lists what is held.</exception>
    public static SteelGrade Of(string name) => TryOf(name, out SteelGrade? steel)
        ? steel!
        : throw new ArgumentException("Steel \"" + name + "\" is not held here; held: " + string.Join("; ", All) + ".", nameof(name));

    /// <summary>The steel of that name, ignoring case; false when none is held.</summary>
    public static bool TryOf(string? name, [NotNullWhen(true)] out SteelGrade? steel)
    {
        string wanted = Plain(name ?? string.Empty);
        string full = Aliases.TryGetValue(wanted, out string? other) ? Plain(other) : wanted;
        steel = All.FirstOrDefault(s => Plain(s.Name) == full);
        return steel is not null;
    }

    // Case, blanks and punctuation tell no two steels apart.
    private static string Plain(string name) =>
        new([.. name.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant)]);
}
