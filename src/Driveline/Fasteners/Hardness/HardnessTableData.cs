using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>The lines of the hardness conversion tables held, as printed: HV, HBW, HRB, HRC, tensile strength.</summary>
internal static class HardnessTableData
{
    private const double _ = double.NaN;

    private static readonly Basis Din50150Basis =
        Basis.Published("DIN 50150", "1976", "conversion of hardness").ReadVia("public technical pages; one names the edition");

    // The page with Rockwell B misprints five lines: two further pages agree against it.
    // Neither of these pages names the edition.
    private static readonly Basis Din50150OtherPages = Basis.CommonPractice(
        "DIN 50150, conversion of hardness, edition not stated").ReadVia("two further public technical pages");

    private static readonly Basis SteelByBrinellBasis =
        Basis.CommonPractice("approximate conversion for steel by Brinell, after SAE J417 or ASTM A370, edition not stated")
            .ReadVia("a steel supplier page");

    private static readonly Basis A370SeenBasis =
        Basis.CommonPractice("ASTM A370, Tables 2 and 3, edition not stated").ReadVia("a second public page with the same figure");

    private static readonly Basis A370MemoryBasis =
        Basis.FromMemory("ASTM A370, Tables 2 and 3");

    private static readonly Basis A370ConflictBasis =
        Basis.FromMemory("ASTM A370, Table 2 at HRC 45: 214 ksi; another page prints 215");

    private static readonly Basis OtherBrinellBasis =
        Basis.CommonPractice("a general hardness page of a machine shop, which differs from other tables by up to 5 ksi");

    /// <summary>Vickers first; unalloyed and low-alloy steel.</summary>
    public static readonly HardnessTable Din50150 = new(
        "DIN 50150 (ISO 18265 Table A.1)",
        "MPa",
        [
            new(80, 76, _, _, 255, Din50150OtherPages),
            new(85, 80.7, _, _, 270, Din50150Basis),
            new(90, 85.5, _, _, 285, Din50150OtherPages),
            new(95, 90.2, _, _, 305, Din50150Basis),
            new(100, 95, _, _, 320, Din50150Basis),
            new(105, 99.8, _, _, 335, Din50150Basis),
            new(110, 105, _, _, 350, Din50150Basis),
            new(115, 109, _, _, 370, Din50150Basis),
            new(120, 114, _, _, 385, Din50150OtherPages),
            new(125, 119, 64.5, _, 400, Din50150Basis),
            new(130, 124, 67.5, _, 415, Din50150Basis),
            new(135, 128, 70, _, 430, Din50150Basis),
            new(140, 133, 73, _, 450, Din50150Basis),
            new(145, 138, 75, _, 465, Din50150Basis),
            new(150, 143, 77, _, 480, Din50150Basis),
            new(155, 147, 78, _, 495, Din50150OtherPages),
            new(160, 152, 80, _, 510, Din50150Basis),
            new(165, 156, 82.1, _, 530, Din50150Basis),
            new(170, 162, 84, _, 545, Din50150Basis),
            new(175, 166, 84.9, _, 560, Din50150Basis),
            new(180, 171, 86, _, 575, Din50150Basis),
            new(185, 176, 87.5, _, 595, Din50150Basis),
            new(190, 181, 88.6, _, 610, Din50150Basis),
            new(195, 185, 89.6, _, 625, Din50150Basis),
            new(200, 190, 90.9, _, 640, Din50150Basis),
            new(205, 195, 92, _, 660, Din50150Basis),
            new(210, 199, 93, _, 675, Din50150Basis),
            new(215, 204, 94, _, 690, Din50150Basis),
            new(220, 209, 95, _, 705, Din50150Basis),
            new(225, 214, 95.6, _, 720, Din50150Basis),
            new(230, 219, 97, _, 740, Din50150Basis),
            new(235, 223, 97.5, _, 755, Din50150Basis),
            new(240, 228, 98.4, 20.3, 770, Din50150Basis),
            new(245, 233, 99, 21.3, 785, Din50150Basis),
            new(250, 238, 100, 22.2, 800, Din50150Basis),
            new(255, 242, 101, 23.1, 820, Din50150Basis),
            new(260, 247, _, 24, 835, Din50150Basis),
            new(265, 252, _, 24.8, 850, Din50150Basis),
            new(270, 257, _, 25.6, 865, Din50150Basis),
            new(275, 261, 103, 26.4, 880, Din50150Basis),
            new(280, 266, _, 27.1, 900, Din50150Basis),
            new(285, 271, _, 27.8, 915, Din50150Basis),
            new(290, 276, _, 28.5, 930, Din50150Basis),
            new(295, 280, 105.5, 29.2, 950, Din50150Basis),
            new(300, 285, _, 29.8, 965, Din50150Basis),
            new(310, 295, _, 31, 995, Din50150Basis),
            new(320, 304, _, 32.2, 1030, Din50150Basis),
            new(330, 314, _, 33.3, 1060, Din50150Basis),
            new(340, 323, _, 34.4, 1095, Din50150Basis),
            new(350, 333, _, 35.5, 1125, Din50150Basis),
            new(360, 342, _, 36.6, 1155, Din50150OtherPages),
            new(370, 352, _, 37.7, 1190, Din50150Basis),
            new(380, 361, _, 38.8, 1220, Din50150Basis),
            new(390, 371, _, 39.8, 1255, Din50150Basis),
            new(400, 380, _, 40.8, 1290, Din50150Basis),
            new(410, 390, _, 41.8, 1320, Din50150Basis),
            new(420, 399, _, 42.7, 1350, Din50150Basis),
            new(430, 409, _, 43.6, 1385, Din50150Basis),
            new(440, 418, _, 44.5, 1420, Din50150Basis),
            new(450, 428, _, 45.3, 1455, Din50150Basis),
        ]);

    /// <summary>Brinell first, with Rockwell beside.</summary>
    public static readonly HardnessTable SteelByBrinell = new(
        "steel by Brinell (ASTM A370 and SAE J417 family)",
        "ksi",
        [
            new(_, 163, 85, _, 82, SteelByBrinellBasis),
            new(_, 167, 86, _, 83, SteelByBrinellBasis),
            new(_, 170, 86.8, _, 84, SteelByBrinellBasis),
            new(_, 174, 87.8, _, 86, SteelByBrinellBasis),
            new(_, 179, 89, _, 88, SteelByBrinellBasis),
            new(_, 183, 90, _, 89, SteelByBrinellBasis),
            new(_, 187, 90.7, _, 90, SteelByBrinellBasis),
            new(_, 192, 91.9, _, 92, SteelByBrinellBasis),
            new(_, 197, 92.8, _, 94, SteelByBrinellBasis),
            new(_, 201, 93.8, _, 97, SteelByBrinellBasis),
            new(_, 207, 94.6, _, 99, SteelByBrinellBasis),
            new(_, 212, 95.5, _, 100, SteelByBrinellBasis),
            new(_, 217, 96.4, _, 103, SteelByBrinellBasis),
            new(_, 223, 97.3, _, 104, SteelByBrinellBasis),
            new(_, 229, 98.2, 20.5, 111, SteelByBrinellBasis),
            new(_, 235, 99, 21.7, 114, SteelByBrinellBasis),
            new(_, 241, 100, 22.8, 116, SteelByBrinellBasis),
            new(_, 248, _, 24.2, 120, SteelByBrinellBasis),
            new(_, 255, _, 25.4, 124, SteelByBrinellBasis),
            new(_, 262, _, 26.6, 127, SteelByBrinellBasis),
            new(_, 269, _, 27.6, 130, SteelByBrinellBasis),
            new(_, 277, _, 28.8, 134, SteelByBrinellBasis),
            new(_, 285, _, 29.9, 138, SteelByBrinellBasis),
            new(_, 293, _, 30.9, 141, SteelByBrinellBasis),
            new(_, 302, _, 32.1, 146, SteelByBrinellBasis),
            new(_, 311, _, 33.1, 149, SteelByBrinellBasis),
            new(_, 321, _, 34.3, 153, SteelByBrinellBasis),
            new(_, 331, _, 35.5, 159, SteelByBrinellBasis),
            new(_, 341, _, 36.6, 164, SteelByBrinellBasis),
            new(_, 352, _, 37.9, 171, SteelByBrinellBasis),
            new(_, 363, _, 39.1, 177, SteelByBrinellBasis),
            new(_, 375, _, 40.4, 184, SteelByBrinellBasis),
            new(_, 388, _, 41.8, 193, SteelByBrinellBasis),
            new(_, 401, _, 43.1, 202, SteelByBrinellBasis),
            new(_, 415, _, 44.5, 212, SteelByBrinellBasis),
        ]);

    /// <summary>Rockwell C 20 to 45.</summary>
    public static readonly HardnessTable A370RockwellC = new(
        "ASTM A370 Table 2",
        "ksi",
        [
            new(_, _, _, 20, 110, A370MemoryBasis),
            new(_, _, _, 21, 112, A370MemoryBasis),
            new(_, _, _, 22, 115, A370MemoryBasis),
            new(_, _, _, 23, 117, A370MemoryBasis),
            new(_, _, _, 24, 119, A370MemoryBasis),
            new(_, _, _, 25, 123, A370MemoryBasis),
            new(_, _, _, 26, 125, A370MemoryBasis),
            new(_, _, _, 27, 128, A370MemoryBasis),
            new(_, _, _, 28, 131, A370MemoryBasis),
            new(_, _, _, 29, 135, A370MemoryBasis),
            new(_, _, _, 30, 138, A370MemoryBasis),
            new(_, _, _, 31, 141, A370MemoryBasis),
            new(_, _, _, 32, 146, A370MemoryBasis),
            new(_, _, _, 33, 149, A370MemoryBasis),
            new(_, _, _, 34, 152, A370MemoryBasis),
            new(_, _, _, 35, 156, A370MemoryBasis),
            new(_, _, _, 36, 161, A370MemoryBasis),
            new(_, _, _, 37, 166, A370MemoryBasis),
            new(_, _, _, 38, 171, A370MemoryBasis),
            new(_, _, _, 39, 177, A370MemoryBasis),
            new(_, _, _, 40, 182, A370MemoryBasis),
            new(_, _, _, 41, 188, A370MemoryBasis),
            new(_, _, _, 42, 194, A370MemoryBasis),
            new(_, _, _, 43, 201, A370MemoryBasis),
            new(_, _, _, 44, 208, A370SeenBasis),
            new(_, _, _, 45, 214, A370ConflictBasis),
        ]);

    /// <summary>Rockwell B 65 to 100; the table gives no tensile strength below HRB 65.</summary>
    public static readonly HardnessTable A370RockwellB = new(
        "ASTM A370 Table 3",
        "ksi",
        [
            new(_, _, 65, _, 56, A370MemoryBasis),
            new(_, _, 66, _, 57, A370MemoryBasis),
            new(_, _, 67, _, 58, A370MemoryBasis),
            new(_, _, 68, _, 59, A370MemoryBasis),
            new(_, _, 69, _, 60, A370MemoryBasis),
            new(_, _, 70, _, 61, A370MemoryBasis),
            new(_, _, 71, _, 62, A370MemoryBasis),
            new(_, _, 72, _, 63, A370MemoryBasis),
            new(_, _, 73, _, 64, A370MemoryBasis),
            new(_, _, 74, _, 65, A370MemoryBasis),
            new(_, _, 75, _, 66, A370MemoryBasis),
            new(_, _, 76, _, 67, A370MemoryBasis),
            new(_, _, 77, _, 68, A370MemoryBasis),
            new(_, _, 78, _, 69, A370MemoryBasis),
            new(_, _, 79, _, 70, A370MemoryBasis),
            new(_, _, 80, _, 72, A370MemoryBasis),
            new(_, _, 81, _, 73, A370MemoryBasis),
            new(_, _, 82, _, 77, A370MemoryBasis),
            new(_, _, 83, _, 80, A370MemoryBasis),
            new(_, _, 84, _, 81, A370MemoryBasis),
            new(_, _, 85, _, 82, A370SeenBasis),
            new(_, _, 86, _, 83, A370SeenBasis),
            new(_, _, 87, _, 84, A370MemoryBasis),
            new(_, _, 88, _, 86, A370MemoryBasis),
            new(_, _, 89, _, 88, A370SeenBasis),
            new(_, _, 90, _, 89, A370SeenBasis),
            new(_, _, 91, _, 90, A370MemoryBasis),
            new(_, _, 92, _, 92, A370MemoryBasis),
            new(_, _, 93, _, 94, A370MemoryBasis),
            new(_, _, 94, _, 98, A370MemoryBasis),
            new(_, _, 95, _, 100, A370MemoryBasis),
            new(_, _, 96, _, 102, A370MemoryBasis),
            new(_, _, 97, _, 104, A370MemoryBasis),
            new(_, _, 98, _, 109, A370MemoryBasis),
            new(_, _, 99, _, 114, A370SeenBasis),
            new(_, _, 100, _, 116, A370SeenBasis),
        ]);

    /// <summary>Kept to show how far public tables disagree.</summary>
    public static readonly HardnessTable OtherBrinell = new(
        "a second Brinell page",
        "ksi",
        [
            new(_, 179, _, _, 87, OtherBrinellBasis),
            new(_, 183, _, _, 89, OtherBrinellBasis),
            new(_, 192, _, _, 93, OtherBrinellBasis),
            new(_, 241, _, _, 118, OtherBrinellBasis),
            new(_, 302, _, _, 150, OtherBrinellBasis),
            new(_, 321, _, _, 160, OtherBrinellBasis),
            new(_, 363, _, _, 182, OtherBrinellBasis),
            new(_, 415, _, _, 210, OtherBrinellBasis),
        ]);
}
