using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;

namespace Driveline.Quantities;

/// <summary>Reads quantities as people write them: "650 lbf.ft", "1 3/4 in", "12,5 mm", "540 min⁻¹", "35 hp".</summary>
/// <remarks>
/// Invariant: the current culture never matters. A dot is always the decimal point; a comma is read as decimal or as grouping
/// when only one of the two is possible, and "1,200 N.m" is refused because it can mean either.
/// Unit factors are exact where the unit is: hp is the mechanical horsepower, 550 ft·lbf/s; PS is the metric one, 75 kgf·m/s.
/// The Try method says what is wrong; the other throws it.
/// </remarks>
public static partial class QuantityText
{
    /// <summary>Longest text that is read.</summary>
    internal const int LongestText = 100;

    /// <summary>Reads a quantity of the given dimension into SI.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="dimension">What is wanted.</param>
    /// <param name="si">The SI value; 0 when there is none.</param>
    /// <param name="problem">One sentence that says what was received, what is wrong and what is accepted; null when read.</param>
    internal static bool TryParse(string? text, Dimension dimension, out double si, [NotNullWhen(false)] out string? problem)
    {
        si = 0;
        string wanted = WrittenUnits.Words(dimension);
        string clean = Clean(text);
        if (clean.Length == 0)
        {
            problem = "Here " + wanted + " is wanted, " + Accepted(dimension) + "; got an empty text.";
            return false;
        }

        if (clean.Length > LongestText)
        {
            problem = FormattableString.Invariant($"Here {wanted} is wanted, in at most {LongestText} characters; got {clean.Length}.");
            return false;
        }

        string received = "“" + clean + "”";
        if (!NumberText.TryRead(clean, out double value, out int used, out string? why))
        {
            why = NotFinite(clean) ? "it is not a finite number" : why;
            problem = received + " is not " + wanted + ": " + why + "; " + Accepted(dimension) + ".";
            return false;
        }

        if (!TryFindUnit(clean.Substring(used).Trim(), dimension, received, out WrittenUnit? unit, out problem))
        {
            return false;
        }

        si = unit.ToSi(value);
        if (!Guard.IsFinite(si) || (si == 0 && value != 0 && unit.Offset == 0))
        {
            si = 0;
            problem = received + " is not " + wanted + ": its number is "
                + (Guard.IsFinite(si) && Math.Abs(value) < 1 ? "too close to 0." : "too large.");
            return false;
        }

        return true;
    }

    /// <summary>A text that reads back as exactly the same SI value, in a unit that keeps it short, e.g. "12.7 mm".</summary>
    internal static string Format(double si, Dimension dimension)
    {
        if (!Guard.IsFinite(si))
        {
            throw new ArgumentOutOfRangeException(nameof(si), si, "Only a finite value can be written.");
        }

        string? shortest = null;
        foreach (WrittenUnit unit in WrittenUnits.Of(dimension))
        {
            string? text = Exactly(si, unit, out int digits);
            double size = Math.Abs(unit.FromSi(si));
            bool isHandy = size is >= 1 and < 10000 || si == 0 || dimension == Dimension.Number;
            if (text is not null && isHandy && digits <= 5)
            {
                return text;
            }

            if (text is not null && (shortest is null || text.Length < shortest.Length))
            {
                shortest = text;
            }
        }

        return shortest!;
    }

    /// <summary>The units of a dimension that we name in messages, e.g. "N.m, kN.m, lbf.ft, lbf.in, kgf.m".</summary>
    internal static string AcceptedUnits(Dimension dimension)
    {
        var text = new StringBuilder();
        IReadOnlyList<WrittenUnit> units = WrittenUnits.Of(dimension);
        for (int i = 0; i < units.Count && i < 5; i++)
        {
            text.Append(text.Length > 0 ? ", " : string.Empty).Append(units[i].Symbol);
        }

        return text.ToString();
    }

    private static string Accepted(Dimension dimension) => dimension == Dimension.Number
        ? "such as 1.47 or 40 %"
        : "a number with a unit: " + AcceptedUnits(dimension);

    private static bool TryFindUnit(
        string written, Dimension dimension, string received, [NotNullWhen(true)] out WrittenUnit? unit,
        [NotNullWhen(false)] out string? problem)
    {
        string spelling = UnitSpelling.Normal(written);
        unit = WrittenUnits.Find(dimension, spelling);
        if (unit is not null)
        {
            problem = null;
            return true;
        }

        string wanted = WrittenUnits.Words(dimension);
        problem = spelling.Length == 0 ? received + " has no unit: " + wanted + " is " + Accepted(dimension) + "."
            : WrittenUnits.FindAny(spelling) is { } other
                ? received + " is " + WrittenUnits.Words(other.Dimension) + "; here " + wanted + " is wanted: " + AcceptedUnits(dimension)
                    .TrimStart(',', ' ') + "."
            : "The unit “" + written + "” of " + received + " is not known here; " + wanted + " is " + Accepted(dimension) + ".";
        return false;
    }

    /// <summary>The value in a unit, if some decimal of at most 17 digits in that unit reads back exactly.</summary>
    private static string? Exactly(double si, WrittenUnit unit, out int digits)
    {
        double value = unit.FromSi(si);
        for (digits = 15; digits <= 17 && Guard.IsFinite(value); digits++)
        {
            string number = value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            if (unit.ToSi(double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture)).Equals(si))
            {
                digits = Math.Min(digits, SignificantDigits(number));
                return unit.Symbol.Length == 0 ? number : number + " " + unit.Symbol;
            }
        }

        return null;
    }

    private static int SignificantDigits(string number)
    {
        int exponent = number.IndexOf('E');
        string digits = (exponent < 0 ? number : number.Substring(0, exponent)).Replace(".", string.Empty).TrimStart('-', '0');
        return digits.Length;
    }

    private static bool NotFinite(string text) =>
        text.TrimStart('-', '+') is { } bare
        && (bare.StartsWith("nan", StringComparison.OrdinalIgnoreCase) || bare.StartsWith("inf", StringComparison.OrdinalIgnoreCase)
            || (bare.Length > 0 && bare[0] == '∞'));

    /// <summary>One kind of space, minus and slash; no space at the ends, none doubled.</summary>
    private static string Clean(string? text)
    {
        if (text is null)
        {
            return string.Empty;
        }

        var clean = new StringBuilder(Math.Min(text.Length, LongestText + 1));
        foreach (char c in text)
        {
            char plain = c switch
            {
                _ when char.IsWhiteSpace(c) => ' ',
                '−' or '‐' or '‑' or '–' or '﹣' or '－' => '-',
                '⁄' or '∕' => '/',
                _ => c,
            };
            if (plain is '\u200B' or '\u2060' or '\uFEFF' || (plain == ' ' && (clean.Length == 0 || clean[clean.Length - 1] == ' ')))
            {
                continue;
            }

            clean.Append(plain);
        }

        return clean.ToString().TrimEnd(' ');
    }
}
