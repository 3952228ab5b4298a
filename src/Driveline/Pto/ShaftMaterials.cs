using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>Shaft steels with textbook strengths, all remembered.</summary>
internal static class ShaftMaterials
{
    private static readonly Basis Remembered = Basis.FromMemory("textbook table of steel strengths");

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
    public static SteelGrade HotRolled1045 { get; } = new("1045 hot rolled", 310, 565, Remembered);

    /// <summary>1045, cold drawn: yield 530 MPa, tensile 625 MPa.</summary>
    public static SteelGrade ColdDrawn1045 { get; } = new("1045 cold drawn", 530, 625, Remembered);

    /// <summary>4140, quenched and tempered at 650 °C: yield 655 MPa, tensile 758 MPa.</summary>
    public static SteelGrade Tempered650C4140 { get; } = new("4140 quenched, tempered 650 °C", 655, 758, Remembered);

    /// <summary>4140, quenched and tempered at 540 °C: yield 834 MPa, tensile 951 MPa.</summary>
    public static SteelGrade Tempered540C4140 { get; } = new("4140 quenched, tempered 540 °C", 834, 951, Remembered);

    /// <summary>4140, quenched and tempered at 425 °C: yield 1140 MPa, tensile 1250 MPa.</summary>
    public static SteelGrade Tempered425C4140 { get; } = new("4140 quenched, tempered 425 °C", 1140, 1250, Remembered);

    /// <summary>All of them, weakest first; the usual names of plain, tube and quenched steels beside those above.</summary>
    /// <remarks>A name without a state, such as "4140", means the weakest state in which that steel is sold for shafts and tubes.</remarks>
    public static IReadOnlyList<SteelGrade> All { get; } = Array.AsReadOnly(
    [
        new("1020 hot rolled", 205, 380, Remembered),
        new("S235", 235, 360, Remembered),
        new("1026 hot finished", 240, 450, Remembered),
        new("C45 normalized", 305, 580, Remembered),
        HotRolled1045,
        new("1020 cold drawn", 350, 420, Remembered),
        new("S355", 355, 470, Remembered),
        new("E355", 355, 490, Remembered),
        new("4140 annealed", 415, 655, Remembered),
        new("42CrMo4 annealed", 415, 655, Remembered),
        new("C45 quenched, tempered", 430, 650, Remembered),
        new("1026 cold drawn", 480, 550, Remembered),
        ColdDrawn1045,
        new("42CrMo4 quenched, tempered", 650, 900, Remembered),
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
