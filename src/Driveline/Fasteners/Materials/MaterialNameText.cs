using System.Diagnostics.CodeAnalysis;

namespace Driveline.Fasteners;

/// <summary>Reads what a bolt is made of, as people write it.</summary>
internal static class MaterialNameText
{
    private const int LongestText = 100;
    private const string RodWord = "rod ";

    private static readonly string[] UnmarkedWords = ["unmarked", "no mark", "no marks", "ungraded", "none"];

    private static readonly string[] NotKnownWords = ["not known", "notknown", "unknown", "?"];

    public static bool TryParse(string? text, [NotNullWhen(true)] out MaterialName? material, [NotNullWhen(false)] out string? problem)
    {
        string word = text is { Length: <= LongestText } ? text.Trim() : string.Empty;
        problem = null;
        material = UnmarkedWords.Contains(word, StringComparer.OrdinalIgnoreCase) ? MaterialName.Unmarked
            : NotKnownWords.Contains(word, StringComparer.OrdinalIgnoreCase) ? MaterialName.NotKnown
            : null;
        if (material is not null)
        {
            return true;
        }

        bool saysRod = word.StartsWith(RodWord, StringComparison.OrdinalIgnoreCase);
        if (!saysRod && Hardness.TryParse(text, out Hardness? hardness, out _))
        {
            problem = hardness!.TryToTensile(out _) ? null : HardnessTables.OffTheTablesText(hardness);
            material = problem is null ? MaterialName.Of(hardness) : null;
            return material is not null;
        }

        string? noGrade = null;
        if (!saysRod && BoltGrade.TryParse(text, out BoltGrade? grade, out noGrade))
        {
            material = MaterialName.Of(grade!);
            return true;
        }

        string name = saysRod ? word.Substring(RodWord.Length) : word;
        bool isRod = RodMaterial.TryParse(name, out RodMaterial? rod, out string? noRod);

        if (isRod && Names(name, rod!))
        {
            material = MaterialName.Of(rod!);
            return true;
        }

        // An alloy that fits several rods is nearer to the mark than the list of grades.
        bool isAlloy = RodMaterials.All.Any(m => Names(name, m));
        noRod ??= "\"" + word + "\" is not a rod material held here; held: "
            + string.Join(", ", RodMaterials.All.Select(m => m.Designation)) + ".";
        problem = saysRod || isAlloy
            ? noRod
            : noGrade + " Also read here: a hardness such as HRC 28, a rod material such as 6061-T6 or rod SAE 1018, \"unmarked\", "
                + "\"not known\".";
        return false;
    }

    // "SAE 101" must not pass for SAE 1010: every word of the text is a whole word of the designation.
    private static bool Names(string text, RodMaterial rod) => Words(text) is { Count: > 0 } words
        && words.All(Words(rod.Designation).Contains);

    private static HashSet<string> Words(string text) => new(
        new string([.. text.ToUpperInvariant().Replace("ALUMINUM", "ALUMINIUM").Select(c => char.IsLetterOrDigit(c) ? c : ' ')])
            .Split([' '], StringSplitOptions.RemoveEmptyEntries),
        StringComparer.Ordinal);
}
