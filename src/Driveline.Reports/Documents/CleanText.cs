using System.Globalization;
using System.Text;

namespace Driveline.Reports.Documents;

/// <summary>Makes a text from a case safe to print on one line: no control characters, no direction tricks, not endless.</summary>
internal static class CleanText
{
    /// <summary>Longest line that is kept; more ends in an ellipsis.</summary>
    public const int LongestLine = 600;

    /// <summary>Longest name that is kept.</summary>
    public const int LongestName = 60;

    /// <summary>Longest title that is kept.</summary>
    public const int LongestTitle = 100;

    /// <summary>A title as one printable line.</summary>
    public static string Title(string text) => Clean(text, LongestTitle);

    /// <summary>One printable line.</summary>
    public static string Line(string text) => Clean(text, LongestLine);

    /// <summary>A name of a part, device or case as one printable line; "unnamed" when nothing printable is left.</summary>
    public static string Name(string? text)
    {
        string name = Clean(text ?? string.Empty, LongestName);
        return name.Length == 0 ? "unnamed" : name;
    }

    /// <summary>A label of a letter as one printable line; null when nothing printable is left.</summary>
    public static string? Label(string? text) => Clean(text ?? string.Empty, LongestTitle) is { Length: > 0 } label ? label : null;

    private static string Clean(string text, int longest)
    {
        var clean = new StringBuilder(Math.Min(text.Length, longest));
        for (int k = 0; k < text.Length; k++)
        {
            char c = text[k];
            bool isPair = char.IsHighSurrogate(c) && k + 1 < text.Length && char.IsLowSurrogate(text[k + 1]);
            if (clean.Length + (isPair ? 2 : 1) > longest)
            {
                return clean.ToString().TrimEnd() + "…";
            }

            if (isPair)
            {
                clean.Append(c).Append(text[++k]);
            }
            else if (IsBlank(c))
            {
                if (clean.Length > 0 && clean[clean.Length - 1] != ' ')
                {
                    clean.Append(' ');
                }
            }
            else if (char.IsSurrogate(c) || c >= '\uFFFE')
            {
                clean.Append('\uFFFD');
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.Format)
            {
                clean.Append(c);
            }
        }

        return clean.ToString().TrimEnd();
    }

    // A no-break or narrow space stays as it is: it belongs to numbers.
    private static bool IsBlank(char c) => char.IsControl(c) || c is ' ' or '\u2028' or '\u2029';
}
