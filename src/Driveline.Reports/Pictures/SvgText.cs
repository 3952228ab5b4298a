using System.Globalization;
using System.Text;

namespace Driveline.Reports.Pictures;

/// <summary>Writes numbers and words of a picture: the same digits in every culture, no character that means markup.</summary>
internal static class SvgText
{
    // Most numbers of a picture are a length below a thousand with two decimals.
    private static readonly string[] Wholes = [.. Enumerable.Range(0, 1001).Select(k => k.ToString(CultureInfo.InvariantCulture))];

    private static readonly string[] Fractions =
        [.. Enumerable.Range(0, 100).Select(k => "." + k.ToString("00", CultureInfo.InvariantCulture).TrimEnd('0'))];

    private static readonly char[] Special = ['&', '<', '>', '"', '\''];

    /// <summary>A length with at most two decimals; no finite number is written otherwise.</summary>
    public static StringBuilder Number(this StringBuilder text, double value)
    {
        long hundredths = double.IsNaN(value) ? 0 : (long)Math.Round(Math.Max(-1e6, Math.Min(1e6, value)) * 100);
        if (hundredths < 0)
        {
            text.Append('-');
            hundredths = -hundredths;
        }

        long whole = hundredths / 100;
        int rest = (int)(hundredths % 100);
        Digits(text, whole);
        if (rest > 0)
        {
            text.Append(Fractions[rest]);
        }

        return text;
    }

    /// <summary>Words in which no character means markup.</summary>
    public static StringBuilder Escaped(this StringBuilder text, string words)
    {
        if (words.IndexOfAny(Special) < 0)
        {
            return text.Append(words);
        }

        foreach (char c in words)
        {
            _ = c switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                _ => text.Append(c),
            };
        }

        return text;
    }

    private static void Digits(StringBuilder text, long whole)
    {
        if (whole < Wholes.Length)
        {
            text.Append(Wholes[whole]);
            return;
        }

        Digits(text, whole / 10);
        text.Append((char)('0' + (whole % 10)));
    }
}
