using System.Globalization;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Quotes;

/// <summary>Amounts of a quote: to the cent, half a cent up, each line rounded once and the total their sum.</summary>
internal static class QuoteMoney
{
    public static decimal Rounded(decimal amount) => Math.Round(amount, 2, MidpointRounding.AwayFromZero);

    public static string In(decimal amount, string? currency, Phrase phrase)
    {
        string number = Rounded(amount).ToString("F2", CultureInfo.InvariantCulture);
        return (phrase.Language == Language.English ? number : number.Replace('.', ','))
            + (string.IsNullOrWhiteSpace(currency) ? string.Empty : "\u00A0" + CleanText.Name(currency));
    }
}
