using System.Globalization;

namespace Driveline.Quantities;

/// <summary>Reads the number at the start of a written quantity: decimals, fractions, mixed numbers, grouped digits.</summary>
internal static class NumberText
{
    private static readonly char[] Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒".ToCharArray();
    private static readonly double[] VulgarValues =
        [1 / 2.0, 1 / 3.0, 2 / 3.0, 1 / 4.0, 3 / 4.0, 1 / 5.0, 2 / 5.0, 3 / 5.0, 4 / 5.0, 1 / 6.0, 5 / 6.0, 1 / 8.0, 3 / 8.0, 5 / 8.0,
            7 / 8.0, 1 / 10.0];

    /// <summary>Reads the number that the text begins with.</summary>
    /// <param name="text">The text after <see cref="QuantityText"/> cleaned its spaces and signs; not empty.</param>
    /// <param name="value">The number.</param>
    /// <param name="used">How many characters it took.</param>
    /// <param name="problem">Why there is none.</param>
    public static bool TryRead(string text, out double value, out int used, out string? problem)
    {
        value = 0;
        used = 0;
        bool negative = text[0] == '-';
        int start = negative || text[0] == '+' ? 1 : 0;
        int at = start;
        int whole = Digits(text, ref at);

        if (!TryFraction(text, start, at, whole, out value, out used, out problem))
        {
            if (problem is not null || !TryDecimal(text, start, out value, out used, out problem))
            {
                return false;
            }
        }

        if (used < text.Length && (IsDigit(text[used]) || Array.IndexOf(Vulgar, text[used]) >= 0))
        {
            problem = "it cannot be read as one number";
            return false;
        }

        value = negative ? -value : value;
        return true;
    }

    private static bool TryFraction(
        string text, int start, int afterWhole, int wholeDigits, out double value, out int used, out string? problem)
    {
        value = 0;
        used = 0;
        problem = null;
        int at = afterWhole;
        if (wholeDigits > 9)
        {
            return false;
        }

        double whole = wholeDigits == 0 ? 0 : Parse(text.Substring(start, wholeDigits));
        if (wholeDigits > 0 && at < text.Length && text[at] == '/' && at + 1 < text.Length && IsDigit(text[at + 1]))
        {
            return Fraction(text, whole, 0, at + 1, out value, out used, out problem);
        }

        if (wholeDigits > 0 && at < text.Length && text[at] is ' ' or '-')
        {
            at++;
        }

        if (at < text.Length && Array.IndexOf(Vulgar, text[at]) is >= 0 and int glyph)
        {
            value = whole + VulgarValues[glyph];
            used = at + 1;
            return true;
        }

        int numeratorStart = at;
        int numeratorDigits = Digits(text, ref at);
        bool isMixed = wholeDigits > 0 && numeratorStart > afterWhole && numeratorDigits is > 0 and <= 9
            && at + 1 < text.Length && text[at] == '/' && IsDigit(text[at + 1]);
        return isMixed
            && Fraction(text, Parse(text.Substring(numeratorStart, numeratorDigits)), whole, at + 1, out value, out used, out problem);
    }

    private static bool Fraction(string text, double numerator, double whole, int at, out double value, out int used, out string? problem)
    {
        int start = at;
        int digits = Digits(text, ref at);
        double denominator = digits > 9 ? 0 : Parse(text.Substring(start, digits));
        value = denominator > 0 ? whole + (numerator / denominator) : 0;
        used = at;
        problem = !(denominator > 0) ? "its fraction has no denominator above 0"
            : whole > 0 && numerator >= denominator ? "the fraction of a mixed number must be below 1"
            : null;
        return problem is null;
    }

    private static bool TryDecimal(string text, int start, out double value, out int used, out string? problem)
    {
        int at = start;
        bool grouped = false;
        while (at < text.Length)
        {
            char c = text[at];
            bool groupFollows = c == ' ' && at - start is >= 1 && IsGroup(text, at + 1) && IsLeading(text, start, at);
            if (groupFollows)
            {
                grouped = true;
            }
            else if (!IsDigit(c) && c != '.' && c != ',')
            {
                break;
            }

            at++;
        }

        value = 0;
        used = at;
        string run = text.Substring(start, at - start).Replace(" ", string.Empty);
        if (!TryPlain(run, grouped, out string plain, out problem))
        {
            return false;
        }

        string exponent = Exponent(text, at);
        used = at + exponent.Length;
        bool isNumber = double.TryParse(
            plain + exponent, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out value);
        bool isZero = plain.Trim('0', '.').Length == 0;
        problem = !isNumber || !Guard.IsFinite(value) ? "its number is too large"
            : value == 0 && !isZero ? "its number is too close to 0"
            : null;
        return problem is null;
    }

    /// <summary>The digits with a decimal point and no grouping. A dot alone is always the decimal point.</summary>
    private static bool TryPlain(string run, bool grouped, out string plain, out string? problem)
    {
        plain = run;
        problem = null;
        int comma = run.IndexOf(',');
        int dot = run.IndexOf('.');
        bool oneComma = comma >= 0 && comma == run.LastIndexOf(',');
        bool oneDot = dot >= 0 && dot == run.LastIndexOf('.');
        if (run.Trim('.', ',').Length == 0)
        {
            problem = "it does not begin with a number";
        }
        else if (comma < 0)
        {
            problem = dot >= 0 && !oneDot ? "it has more than one decimal point" : null;
        }
        else if (dot < 0 && oneComma)
        {
            bool mayGroup = !grouped && comma is >= 1 and <= 3 && run.Length - comma == 4 && run[0] != '0';
            plain = run.Replace(',', '.');
            problem = mayGroup
                ? "it can mean " + run.Replace(",", string.Empty) + " or " + plain + ": write the one you mean without a comma"
                : comma == run.Length - 1 ? "nothing follows its decimal comma"
                : null;
        }
        else if (IsGrouped(run, ',', oneDot ? dot : run.Length) && (dot < 0 || oneDot))
        {
            plain = run.Replace(",", string.Empty);
        }
        else if (oneComma && comma < run.Length - 1 && IsGrouped(run, '.', comma))
        {
            plain = run.Replace(".", string.Empty).Replace(',', '.');
        }
        else
        {
            problem = "its dots and commas cannot be read as one number";
        }

        return problem is null;
    }

    /// <summary>
    /// True when the part up to <paramref name="end"/> is 1 to 3 digits followed by groups of three, and the rest has no separator of that
    /// kind.
    /// </summary>
    private static bool IsGrouped(string run, char separator, int end)
    {
        string[] groups = run.Substring(0, end).Split(separator);
        if (groups[0].Length is < 1 or > 3 || run.IndexOf(separator, end) >= 0)
        {
            return false;
        }

        for (int i = 0; i < groups.Length; i++)
        {
            if ((i > 0 && groups[i].Length != 3) || groups[i].IndexOfAny(['.', ',']) >= 0)
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsGroup(string text, int at) =>
        at + 3 <= text.Length && IsDigit(text[at]) && IsDigit(text[at + 1]) && IsDigit(text[at + 2])
        && (at + 3 == text.Length || (!IsDigit(text[at + 3]) && text[at + 3] != '/'));

    /// <summary>True when the text so far is 1 to 3 digits, or such groups.</summary>
    private static bool IsLeading(string text, int start, int end)
    {
        string[] groups = text.Substring(start, end - start).Split(' ');
        return groups[0].Length <= 3 && Array.TrueForAll(groups, g => g.Length > 0 && g.IndexOfAny(['.', ',']) < 0);
    }

    private static string Exponent(string text, int at)
    {
        if (at >= text.Length || text[at] is not ('e' or 'E'))
        {
            return string.Empty;
        }

        int end = at + 1;
        if (end < text.Length && text[end] is '+' or '-')
        {
            end++;
        }

        return Digits(text, ref end) > 0 ? text.Substring(at, end - at) : string.Empty;
    }

    private static int Digits(string text, ref int at)
    {
        int start = at;
        while (at < text.Length && IsDigit(text[at]))
        {
            at++;
        }

        return at - start;
    }

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private static double Parse(string digits) => double.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
