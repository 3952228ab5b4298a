using System.Globalization;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Letters;

/// <summary>An amount of money as people read it: whole from 100 on, two places below.</summary>
internal static class MoneyWords
{
    private const double Whole = 99.995;
    private const double Small = 1.995;
    private const double Cent = 0.005;
    private const double Grouped = 9999.5;

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
        string number = amount < Small && Math.Abs(amount - Math.Round(amount)) > Cent ? phrase.Number(amount, "F2")
            : phrase.Language == Language.English ? amount.ToString("N0", CultureInfo.InvariantCulture)
            : amount.ToString(amount < Grouped ? "F0" : "N0", CultureInfo.InvariantCulture).Replace(",", "\u00A0");
        return phrase.Language == Language.English && sign.Length == 1 ? sign + number : number + "\u00A0" + sign;
    }

    public static string Of(double amount, Phrase phrase) => double.IsInfinity(amount) ? phrase.Of("report.ladder.open")
        : Math.Abs(amount) < Whole ? phrase.Number(amount, "0.##") : phrase.Number(amount, "F0");
}
