using System.Globalization;

namespace Driveline.Tests.Reports;

/// <summary>Works a formula of a step out from the values of its symbols, apart from the code that drew it: a second opinion.</summary>
internal sealed class FormulaValue(string formula, IReadOnlyDictionary<string, double> values)
{
    private int at;

    /// <summary>The value; null when a symbol is not known or the formula is none.</summary>
    public static double? Of(string formula, IReadOnlyDictionary<string, double> values)
    {
        try
        {
            var reader = new FormulaValue(formula, values);
            double value = reader.Sum();
            return reader.at == formula.Length ? value : null;
        }
        catch (FormatException)
        {
            return null;
        }
    }

    private char Here => at < formula.Length ? formula[at] : '\0';

    private double Sum()
    {
        double sum = Takes("-−") ? -Product() : Product();
        while (true)
        {
            if (Takes("+"))
            {
                sum += Product();
            }
            else if (Takes("-−"))
            {
                sum -= Product();
            }
            else
            {
                return sum;
            }
        }
    }

    private double Product()
    {
        double product = Power();
        while (true)
        {
            if (Takes("·"))
            {
                product *= Power();
            }
            else if (Takes("/"))
            {
                product /= Power();
            }
            else
            {
                return product;
            }
        }
    }

    private double Power()
    {
        double power = Factor();
        return Here switch { '²' => Raised(2), '³' => Raised(3), '⁴' => Raised(4), _ => power };

        double Raised(int exponent)
        {
            at++;
            return Math.Pow(power, exponent);
        }
    }

    private double Factor()
    {
        if (Takes("√"))
        {
            return Math.Sqrt(Factor());
        }

        if (Takes("([|"))
        {
            char open = formula[at - 1];
            double inside = Sum();
            return Takes(")]|") ? open == '|' ? Math.Abs(inside) : inside : throw new FormatException();
        }

        int start = at;
        while (char.IsAsciiDigit(Here) || (Here == '.' && at > start))
        {
            at++;
        }

        if (at > start)
        {
            return double.Parse(formula[start..at], CultureInfo.InvariantCulture);
        }

        while (char.IsLetterOrDigit(Here) || Here is '_' or '\'')
        {
            if (Here is '²' or '³' or '⁴')
            {
                break;
            }

            at++;
        }

        string symbol = formula[start..at];
        return symbol == "π" ? Math.PI : values.TryGetValue(symbol, out double value) ? value : throw new FormatException();
    }

    private bool Takes(string any)
    {
        while (Here == ' ')
        {
            at++;
        }

        if (at < formula.Length && any.Contains(Here, StringComparison.Ordinal))
        {
            at++;
            while (Here == ' ')
            {
                at++;
            }

            return true;
        }

        return false;
    }
}
