using Driveline.Choosing;
using Driveline.Fasteners;

namespace Driveline.Cases.Members;

/// <summary>Reads what a case says about a bolt: thread, grade or rod material, hardness, spring pin.</summary>
internal static class BoltTexts
{
    /// <summary>The grade of a bolt without marks.</summary>
    public const string Unmarked = "unmarked";

    private const string RodWord = "rod ";

    private delegate bool Parser<T>(string text, out T? value, out string? problem)
        where T : class;

    public static ScrewThread? Thread(string? text) => Read<ScrewThread>(text, ScrewThread.TryParse, out _);

    public static Hardness? Hardness(string? text) => Read<Hardness>(text, Fasteners.Hardness.TryParse, out _);

    public static HeadMark? HeadMark(string? text) => Read<HeadMark>(text, Fasteners.HeadMark.TryParse, out _);

    public static SpringPin? SpringPin(string? text) => Read<SpringPin>(text, Fasteners.SpringPin.TryParse, out _);

    public static StockList? Stock(string? text) => Read<StockList>(text, StockList.TryParse, out _);

    public static BoltGrade? Grade(string? text) =>
        text is null || IsUnmarked(text) || SaysRod(text) ? null : Read<BoltGrade>(text, BoltGrade.TryParse, out _);

    /// <summary>The rod material, when the grade names one: after "rod", or by its own words when it is no bolt grade.</summary>
    public static RodMaterial? Rod(string? text)
    {
        if (text is null || IsUnmarked(text))
        {
            return null;
        }

        string name = SaysRod(text) ? text.Trim().Substring(RodWord.Length) : text;
        RodMaterial? rod = Grade(text) is null ? Read<RodMaterial>(name, RodMaterial.TryParse, out _) : null;

        // "SAE 101" must not pass for SAE 1010: every word of the text is a whole word of the designation.
        return rod is not null && Words(name).All(Words(rod.Designation).Contains) ? rod : null;
    }

    public static bool IsUnmarked(string? text) => string.Equals(text?.Trim(), Unmarked, StringComparison.OrdinalIgnoreCase);

    public static string? ThreadProblem(string text)
    {
        Read<ScrewThread>(text, ScrewThread.TryParse, out string? problem);
        return problem;
    }

    public static string? HardnessProblem(string text)
    {
        Read<Hardness>(text, Fasteners.Hardness.TryParse, out string? problem);
        return problem;
    }

    public static string? HeadMarkProblem(string text)
    {
        Read<HeadMark>(text, Fasteners.HeadMark.TryParse, out string? problem);
        return problem;
    }

    public static string? SpringPinProblem(string text)
    {
        Read<SpringPin>(text, Fasteners.SpringPin.TryParse, out string? problem);
        return problem;
    }

    public static string? StockProblem(string text)
    {
        Read<StockList>(text, StockList.TryParse, out string? problem);
        return problem;
    }

    public static string? GradeProblem(string text)
    {
        if (IsUnmarked(text) || Grade(text) is not null || Rod(text) is not null)
        {
            return null;
        }

        if (SaysRod(text))
        {
            Read<RodMaterial>(text.Trim().Substring(RodWord.Length), RodMaterial.TryParse, out string? noRod);
            return noRod ?? "\"" + text.Trim() + "\" is not a rod material held here; held: " + string.Join(", ", RodMaterials.All.Select(m => m.Designation)) + ".";
        }

        Read<BoltGrade>(text, BoltGrade.TryParse, out string? problem);
        return problem + " A rod material is written as \"rod SAE 1018\", a bolt without marks as \"unmarked\".";
    }

    /// <summary>Why the standard does not hold the grade at that size; null when it does, or when either is not known.</summary>
    public static string? SizeProblem(string? threadText, string? gradeText)
    {
        ScrewThread? thread = Thread(threadText);
        BoltGrade? grade = Grade(gradeText);
        return thread is null || grade is null || grade.TryAt(thread, out _)
            ? null
            : grade.Designation + " is not held for " + thread.Designation + "; it is held for: " + string.Join("; ", grade.Ranges.Select(r => r.Sizes.Text)) + ".";
    }

    private static bool SaysRod(string text) => text.TrimStart().StartsWith(RodWord, StringComparison.OrdinalIgnoreCase);

    private static HashSet<string> Words(string text) => new(
        new string(text.ToUpperInvariant().Replace("ALUMINUM", "ALUMINIUM").Select(c => char.IsLetterOrDigit(c) ? c : ' ').ToArray())
            .Split([' '], StringSplitOptions.RemoveEmptyEntries),
        StringComparer.Ordinal);

    /// <summary>Digits of other scripts and runaway numbers are no sizes: they become a problem, not an exception.</summary>
    private static T? Read<T>(string? text, Parser<T> parse, out string? problem)
        where T : class
    {
        problem = null;
        if (text is null)
        {
            return null;
        }

        try
        {
            return parse(text, out T? value, out problem) ? value : null;
        }
        catch (Exception e) when (e is FormatException or OverflowException or ArgumentException)
        {
            problem = "\"" + CaseWalk.Shown(text) + "\" cannot be read.";
            return null;
        }
        finally
        {
            int parameter = problem?.IndexOf(" (Parameter '", StringComparison.Ordinal) ?? -1;
            problem = parameter > 0 ? problem!.Substring(0, parameter) : problem;
        }
    }
}
