using System.Text;

namespace Driveline.Quantities;

/// <summary>Brings the many ways to write one unit to one: "lb-ft", "lb ft", "lb·ft" and "lb*ft" all become "lb.ft".</summary>
internal static class UnitSpelling
{
    /// <summary>The spelling under which <see cref="WrittenUnits"/> holds the unit.</summary>
    public static string Normal(string unit)
    {
        var text = new StringBuilder(unit.Length);
        for (int i = 0; i < unit.Length; i++)
        {
            char c = unit[i];
            switch (c)
            {
                case '·' or '⋅' or '∙' or '•' or '*' or '×' or '.' or ' ':
                    Dot(text);
                    break;
                case '-' when i + 1 >= unit.Length || unit[i + 1] is not (>= '0' and <= '9'):
                    Dot(text);
                    break;
                case '/' or ')' or '(':
                    TrimDot(text);
                    text.Append(c);
                    break;
                case '²':
                    text.Append('2');
                    break;
                case '³':
                    text.Append('3');
                    break;
                case '¹':
                    text.Append('1');
                    break;
                case '⁻':
                    text.Append('-');
                    break;
                case '^':
                    break;
                case 'µ' or 'μ':
                    text.Append('u');
                    break;
                case 'º':
                    text.Append('°');
                    break;
                case '”' or '“' or '″':
                    text.Append('"');
                    break;
                case '’' or '′':
                    text.Append('\'');
                    break;
                default:
                    text.Append(c);
                    break;
            }
        }

        TrimDot(text);
        string normal = text.ToString();
        return (normal.StartsWith("per.", StringComparison.Ordinal) ? "." + normal : normal).Replace(".per.", "/");
    }

    private static void Dot(StringBuilder text)
    {
        if (text.Length > 0 && text[text.Length - 1] is not ('.' or '/' or '('))
        {
            text.Append('.');
        }
    }

    private static void TrimDot(StringBuilder text)
    {
        if (text.Length > 0 && text[text.Length - 1] == '.')
        {
            text.Length--;
        }
    }
}
