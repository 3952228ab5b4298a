using Driveline.Clutches;

namespace Driveline.Cases.Members;

/// <summary>Reads what a case says about a clutch: its facing, the series of its disc springs.</summary>
internal static class ClutchTexts
{
    private static readonly char[] FrictionLetters = ['C', 'D', 'E', 'F', 'G', 'H'];
    private static readonly char[] SeriesLetters = ['A', 'B', 'C'];

    /// <summary>The facing of a name or a friction code; null when none is stated.</summary>
    public static Facing? Facing(string? text) => text is null ? null
        : Facings.TryNamed(text, out Facing? named) ? named
        : IsFrictionCode(text) ? Facings.OfFrictionCode(text)
        : null;

    public static string? FacingProblem(string text) => Facing(text) is not null
        ? null
        : "\"" + CaseWalk.Shown(text) + "\" is no facing held here and no friction code of two letters from C to H; held: "
            + string.Join("; ", Facings.All.Select(f => f.Name)) + ".";

    /// <summary>The letter of a series of disc springs; null when none is stated.</summary>
    public static char? Series(string? text) => text is null ? null : char.ToUpperInvariant(text[0]);

    public static string? SeriesProblem(string text) => SeriesLetters.Contains(char.ToUpperInvariant(text[0]))
        ? null
        : "The series is \"A\", \"B\" or \"C\"; got \"" + CaseWalk.Shown(text) + "\".";

    private static bool IsFrictionCode(string text)
    {
        string code = text.Trim().ToUpperInvariant();
        return code.Length == 2 && code.All(c => FrictionLetters.Contains(c));
    }
}
