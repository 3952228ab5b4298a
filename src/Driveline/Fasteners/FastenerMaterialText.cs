namespace Driveline.Fasteners;

/// <summary>Reads what a bolt is made of, as people write it.</summary>
internal static class FastenerMaterialText
{
    private static readonly string[] UnmarkedWords = ["unmarked", "no mark", "no marks", "ungraded", "none"];

    private static readonly string[] NotKnownWords = ["not known", "notknown", "unknown", "?"];

    public static bool TryParse(string? text, ScrewThread thread, out FastenerMaterial? material, out string? problem)
    {
        string word = text is { Length: <= 64 } ? text.Trim().ToLowerInvariant() : string.Empty;
        problem = null;
        if (UnmarkedWords.Contains(word))
        {
            material = thread.System == ThreadSystem.Inch ? FastenerMaterial.UnmarkedInchBolt : FastenerMaterial.UnmarkedMetricBolt;
            return true;
        }

        if (NotKnownWords.Contains(word))
        {
            material = FastenerMaterial.NotKnown;
            return true;
        }

        material = null;
        if (Hardness.TryParse(text, out Hardness? hardness, out _))
        {
            return OfHardness(hardness!, out material, out problem);
        }

        if (BoltGrade.TryParse(text, out BoltGrade? grade, out string? noGrade))
        {
            return OfGrade(grade!, thread, out material, out problem);
        }

        if (RodMaterial.TryParse(text, out RodMaterial? rod, out string? noRod))
        {
            material = FastenerMaterial.Rod(rod!);
            return true;
        }

        // An alloy that fits several rods is nearer to the mark than the list of grades.
        problem = noRod!.Contains(" may be ")
            ? noRod
            : noGrade + " Also read here: a hardness such as HRC 28, a rod material such as 6061-T6, \"unmarked\", \"not known\".";
        return false;
    }

    private static bool OfHardness(Hardness hardness, out FastenerMaterial? material, out string? problem)
    {
        bool held = hardness.TryToTensile(out _);
        material = held ? FastenerMaterial.OfMeasuredHardness(hardness) : null;
        problem = held ? null : HardnessTables.OffTheTables(hardness, nameof(hardness)).Message;
        return held;
    }

    private static bool OfGrade(BoltGrade grade, ScrewThread thread, out FastenerMaterial? material, out string? problem)
    {
        bool held = grade.TryAt(thread, out _);
        material = held ? FastenerMaterial.Graded(grade, thread) : null;
        problem = held ? null : grade.NotHeldText(thread);
        return held;
    }
}
