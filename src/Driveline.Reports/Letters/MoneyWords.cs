using System.Globalization;
using Driveline.Advice;
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
        string number = Number(Rounded(amount), phrase);
        return phrase.Language == Language.English && sign.Length == 1 ? sign + number : number + "\u00A0" + sign;
    }

    /// <summary>A price of the letter: one that we guess names its currency, whose sign could be taken for the owner's own.</summary>
    public static string Price(double amount, OwnerAdvice advice, Phrase phrase) => advice.ArePricesGuessed
        ? Number(Rounded(amount), phrase) + "\u00A0" + CleanText.Name(advice.Currency)
        : In(amount, CleanText.Name(advice.Currency), phrase);

    /// <summary>The lower of two prices of the letter: a guessed one leaves the currency to the upper.</summary>
    public static string PriceFrom(double amount, OwnerAdvice advice, Phrase phrase) => advice.ArePricesGuessed
        ? Number(Rounded(amount), phrase) : Price(amount, advice, phrase);

    /// <summary>An amount that may have no end.</summary>
    public static string InOrOpen(double? amount, string currency, Phrase phrase) =>
        amount is not { } known || double.IsInfinity(known) ? phrase.Of("report.ladder.open") : In(known, currency, phrase);

    private static string Number(double amount, Phrase phrase) =>
        amount < Small && Math.Abs(amount - Math.Round(amount)) > Cent ? phrase.Number(amount, "F2")
            : phrase.Language == Language.English ? amount.ToString("N0", CultureInfo.InvariantCulture)
            : amount.ToString(amount < Grouped ? "F0" : "N0", CultureInfo.InvariantCulture).Replace(",", "\u00A0");

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
