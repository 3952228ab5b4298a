using System.Globalization;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Letters;

/// <summary>An amount of money as people read it: two digits, cents below two.</summary>
internal static class MoneyWords
{
    private const double Small = 1.995;
    private const double Cent = 0.005;
    private const double Grouped = 9999.5;
    private const double Hundred = 100;

    /// <summary>With the sign of the currency where it has a usual one: $1.20, $29, $5,600; 1,20 $ in Spanish.</summary>
    public static string In(double amount, string currency, Phrase phrase)
    {
        string sign = CleanText.Name(currency).ToUpperInvariant() switch
        {
            "USD" => "$",
            "EUR" => "€",
            "GBP" => "£",
            _ => CleanText.Name(currency),
        };
        amount = Rounded(amount);
        string number = amount < Small && Math.Abs(amount - Math.Round(amount)) > Cent ? phrase.Number(amount, "F2")
            : phrase.Language == Language.English ? amount.ToString("N0", CultureInfo.InvariantCulture)
            : amount.ToString(amount < Grouped ? "F0" : "N0", CultureInfo.InvariantCulture).Replace(",", "\u00A0");
        return phrase.Language == Language.English && sign.Length == 1 ? sign + number : number + "\u00A0" + sign;
    }

    /// <summary>An amount that may have no end.</summary>
    public static string InOrOpen(double? amount, string currency, Phrase phrase) =>
        amount is not { } known || double.IsInfinity(known) ? phrase.Of("report.ladder.open") : In(known, currency, phrase);

    // Nobody knows a price to more than two digits.
    private static double Rounded(double amount)
    {
        double step = 1;
        while (Math.Abs(amount) / step >= Hundred)
        {
            step *= 10;
        }

        return step > 1 ? Math.Round(amount / step, MidpointRounding.AwayFromZero) * step : amount;
    }
}
