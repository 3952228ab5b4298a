using System.Text;

namespace Driveline.Reports.Sheets;

/// <summary>A formula as it stands in a step, read as mathematics: products, fractions, powers, roots, indices.</summary>
/// <remarks>
/// Sums of products of powers; "·", "*" or a blank multiply, "/" makes a fraction of its two neighbours. A symbol is one letter with an
/// index, a prime or digits. What reads otherwise is words, such as "area of one shear plane".
/// </remarks>
internal sealed class MathText
{
    private static readonly string[] Functions = ["sin", "cos", "ln"];

    private readonly string text;
    private readonly Func<string, string?> valueOf;
    private int at;
    private bool isWrong;

    private MathText(string text, Func<string, string?> valueOf)
    {
        this.text = text;
        this.valueOf = valueOf;
    }

    /// <summary>The symbols of a formula; null when it is words.</summary>
    public static IReadOnlyList<string>? Symbols(string formula)
    {
        var symbols = new List<string>();
        return Read(formula, s =>
        {
            symbols.Add(s);
            return null;
        }) is null ? null : symbols;
    }

    /// <summary>The inside of a MathML element, with numbers for the symbols that have one; null when it is words.</summary>
    public static string? Read(string formula, Func<string, string?> valueOf)
    {
        var reader = new MathText(formula, valueOf);
        string math = reader.Sum();
        reader.Blank();
        return reader.isWrong || reader.at < formula.Length || math.Length == 0 ? null : math;
    }

    /// <summary>A symbol alone.</summary>
    public static string Symbol(string symbol) => Read(symbol, _ => null) ?? "<mtext>" + Escaped(symbol) + "</mtext>";

    /// <summary>A number with its unit.</summary>
    public static string Value(string words)
    {
        int gap = words.IndexOfAny([' ', '\u00A0']);
        return gap < 0 ? "<mn>" + Escaped(words) + "</mn>"
            : "<mrow><mn>" + Escaped(words.Substring(0, gap)) + "</mn><mspace width=\"0.2em\"/><mtext>" + Escaped(words.Substring(gap + 1))
                + "</mtext></mrow>";
    }

    private static string Escaped(string words) => Documents.HtmlRendering.Escape(words);

    private string Sum()
    {
        var sum = new StringBuilder();
        Blank();
        if (Takes('−') || Takes('-'))
        {
            sum.Append("<mo>−</mo>");
        }

        sum.Append(Product());
        while (!isWrong)
        {
            Blank();
            if (Takes('+'))
            {
                sum.Append("<mo>+</mo>").Append(Product());
            }
            else if (Takes('−') || Takes('-'))
            {
                sum.Append("<mo>−</mo>").Append(Product());
            }
            else
            {
                break;
            }
        }

        return sum.ToString();
    }

    private string Product()
    {
        string left = Power();
        while (!isWrong)
        {
            Blank();
            if (Takes('·') || Takes('*') || Takes('×'))
            {
                left = left + "<mo>·</mo>" + Power();
            }
            else if (Takes('/'))
            {
                left = "<mfrac><mrow>" + left + "</mrow><mrow>" + Below() + "</mrow></mfrac>";
            }
            else if (at < text.Length && (char.IsLetter(text[at]) || text[at] is '(' or '√' or '|' or '[') && text[at] != '²')
            {
                left += "<mo>·</mo>" + Power();
            }
            else
            {
                break;
            }
        }

        return left;
    }

    // A fraction's line says what brackets would.
    private string Below()
    {
        Blank();
        int start = at;
        if (at < text.Length && text[at] == '(')
        {
            string inside = Inside('(', ')', false);
            if (at >= text.Length || "²³⁴".IndexOf(text[at]) < 0)
            {
                return inside;
            }

            at = start;
        }

        return Power();
    }

    private string Power()
    {
        string power = Factor();
        while (at < text.Length && "²³⁴".IndexOf(text[at]) is >= 0 and var k)
        {
            at++;
            power = "<msup><mrow>" + power + "</mrow><mn>" + (char)('2' + k) + "</mn></msup>";
        }

        return power;
    }

    private string Factor()
    {
        Blank();
        if (at >= text.Length)
        {
            return Wrong();
        }

        char c = text[at];
        if (c == '√')
        {
            at++;
            return "<msqrt>" + (at < text.Length && text[at] == '(' ? Inside('(', ')', false) : Factor()) + "</msqrt>";
        }

        return c == '(' ? Inside('(', ')', true) : c == '[' ? Inside('[', ']', true) : c == '|' ? Inside('|', '|', true)
            : char.IsDigit(c) ? Digits() : char.IsLetter(c) ? Name() : Wrong();
    }

    private string Inside(char open, char close, bool isShown)
    {
        at++;
        string inside = Sum();
        Blank();
        return !Takes(close) ? Wrong() : isShown ? "<mrow><mo>" + open + "</mo>" + inside + "<mo>" + close + "</mo></mrow>" : inside;
    }

    private string Digits()
    {
        int start = at;
        while (at < text.Length && (char.IsDigit(text[at]) || (text[at] == '.' && at + 1 < text.Length && char.IsDigit(text[at + 1]))))
        {
            at++;
        }

        string digits = text.Substring(start, at - start);
        return "<mn>" + digits + "</mn>";
    }

    private string Name()
    {
        int start = at;
        at += text[at] == 'Δ' && at + 1 < text.Length && char.IsLetter(text[at + 1]) ? 2 : 1;
        if (at < text.Length && text[at] is 'o' or 'i' && text[start] == 'R')
        {
            at++;
        }

        string letter = text.Substring(start, at - start);
        string function = Functions.FirstOrDefault(f => string.CompareOrdinal(text, start, f, 0, f.Length) == 0) ?? string.Empty;
        if (function.Length > 0)
        {
            at = start + function.Length;
            return "<mrow><mi>" + function + "</mi>" + Factor() + "</mrow>";
        }

        int index = at;
        while (at < text.Length && (text[at] is '_' or '\'' or '₀' or '₁' or '₂' || char.IsDigit(text[at])
            || (at > index && text[index] == '_' && (char.IsLetter(text[at]) || text[at] == ','))))
        {
            at++;
        }

        if (at < text.Length && char.IsLetter(text[at]))
        {
            return Wrong();
        }

        string symbol = text.Substring(start, at - start);
        if (valueOf(symbol) is { } value)
        {
            return Value(value);
        }

        string below = text.Substring(index, at - index).TrimStart('_');
        return below.Length == 0 ? "<mi>" + letter + "</mi>" : "<msub><mi>" + letter + "</mi><mtext>" + Escaped(below) + "</mtext></msub>";
    }

    private bool Takes(char c)
    {
        if (at < text.Length && text[at] == c)
        {
            at++;
            return true;
        }

        return false;
    }

    private void Blank()
    {
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }
    }

    private string Wrong()
    {
        isWrong = true;
        return string.Empty;
    }
}
