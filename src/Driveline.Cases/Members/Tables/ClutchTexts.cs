using System.Diagnostics.CodeAnalysis;
using Driveline.Clutches;

namespace Driveline.Cases.Members;

/// <summary>Reads what a case says about a clutch: its facing, the series of its disc springs.</summary>
internal static class ClutchTexts
{
    private static readonly char[] FrictionLetters = ['C', 'D', 'E', 'F', 'G', 'H'];
    private static readonly string[] SeriesLetters = ["A", "B", "C"];

    /// <summary>The facing of a name or a friction code.</summary>
    public static bool TryFacing(string? text, [NotNullWhen(true)] out Facing? facing, [NotNullWhen(false)] out string? problem)
    {
        string name = text ?? string.Empty;
        facing = Facings.TryNamed(name, out Facing? named) ? named : IsFrictionCode(name) ? Facings.OfFrictionCode(name) : null;
        problem = facing is not null
            ? null
            : "\"" + CaseWalk.Shown(name) + "\" is no facing held here and no friction code of two letters from C to H; held: "
                + string.Join("; ", Facings.All.Select(f => f.Name)) + ".";
        return facing is not null;
    }

    /// <summary>The letter of a series of disc springs.</summary>
    public static bool TrySeries(string? text, [NotNullWhen(true)] out string? series, [NotNullWhen(false)] out string? problem)
    {
        string letter = (text ?? string.Empty).ToUpperInvariant();
        series = SeriesLetters.Contains(letter) ? letter : null;
        problem = series is not null ? null : "The series is \"A\", \"B\" or \"C\"; got \"" + CaseWalk.Shown(text ?? string.Empty) + "\".";
        return series is not null;
    }

    private static bool IsFrictionCode(string text)
    {
        string code = text.Trim().ToUpperInvariant();
        return code.Length == 2 && code.All(c => FrictionLetters.Contains(c));
    }
}
