using System.Globalization;
using Driveline.Quantities;

namespace Driveline.Wording;

/// <summary>A length in inches as shops write it: a fraction where one is near enough, else a decimal.</summary>
internal static class InchWords
{
    private const double NearEnough = 0.003;
    private const int Coarse = 16;
    private const int Fine = 64;
    private const double FineBelow = 0.25;
    private const double LongestFraction = 100;

    /// <summary>Of a length in inches, e.g. "1 3/4 in", "1/64 in", "0.59 in".</summary>
    public static string Of(double inches)
    {
        int parts = Math.Abs(inches) < FineBelow ? Fine : Coarse;
        double count = Math.Round(Math.Abs(inches) * parts, MidpointRounding.AwayFromZero);
        bool isNear = Math.Abs((count / parts) - Math.Abs(inches)) <= NearEnough * Math.Abs(inches);
        return count > 0 && Math.Abs(inches) < LongestFraction && isNear
            ? (inches < 0 ? "-" : string.Empty) + Fraction((int)count, parts) + " in"
            : Significant.Digits(inches, 3) + " in";
    }

    private static string Fraction(int count, int parts)
    {
        while (count % 2 == 0 && parts > 1)
        {
            count /= 2;
            parts /= 2;
        }

        string whole = (count / parts).ToString(CultureInfo.InvariantCulture);
        return count % parts == 0 ? whole
            : (count > parts ? whole + " " : string.Empty) + FormattableString.Invariant($"{count % parts}/{parts}");
    }
}
