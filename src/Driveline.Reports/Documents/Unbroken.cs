using System.Text;

namespace Driveline.Reports.Documents;

/// <summary>Keeps a number and its unit on one line.</summary>
internal static class Unbroken
{
    private const char Blank = '\u00A0';

    private static readonly string[] Units =
    [
        "N·m", "lb·ft", "ft·lbf", "lbf", "lb", "mm", "cm", "m", "in", "ft", "ksi", "psi", "MPa", "kPa", "kW", "hp", "rpm", "min⁻¹", "s",
        "ms", "°C", "°F", "%", "J", "N", "kg·m²", "lb·ft²", "USD", "EUR",
    ];

    /// <summary>The text with a no-break space before each unit, and between inches and their fraction.</summary>
    public static string Of(string text)
    {
        StringBuilder? changed = null;
        for (int at = text.IndexOf(' '); at >= 0; at = text.IndexOf(' ', at + 1))
        {
            if (at > 0 && char.IsDigit(text[at - 1]) && (IsUnit(text, at + 1) || IsFraction(text, at + 1)))
            {
                changed ??= new StringBuilder(text);
                changed[at] = Blank;
            }
        }

        return changed?.ToString() ?? text;
    }

    private static bool IsUnit(string text, int at)
    {
        foreach (string unit in Units)
        {
            int end = at + unit.Length;
            if (string.CompareOrdinal(text, at, unit, 0, unit.Length) == 0
                && (end >= text.Length || !(char.IsLetter(text[end]) || char.IsNumber(text[end]))))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsFraction(string text, int at)
    {
        int end = at;
        while (end < text.Length && char.IsDigit(text[end]))
        {
            end++;
        }

        return end > at && end + 1 < text.Length && text[end] == '/' && char.IsDigit(text[end + 1]);
    }
}
