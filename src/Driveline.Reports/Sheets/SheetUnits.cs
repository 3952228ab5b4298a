using System.Globalization;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Sheets;

/// <summary>The value of a step in the unit of the reader, to four digits, so that a sum can be followed by hand.</summary>
internal static class SheetUnits
{
    public static string Of(double value, string unit, Phrase phrase)
    {
        bool isUs = phrase.Units == DisplayUnits.UsCustomary;
        (double factor, string shown) = unit switch
        {
            "Pa" => isUs ? (1 / 6894757.293168, "ksi") : (1e-6, "MPa"),
            "m" => isUs ? (1 / 0.0254, "in") : (1e3, "mm"),
            "m²" => isUs ? (1 / (0.0254 * 0.0254), "in²") : (1e6, "mm²"),
            "m³" => isUs ? (1 / (0.0254 * 0.0254 * 0.0254), "in³") : (1e9, "mm³"),
            "N" => isUs ? (1 / 4.4482216152605, "lbf") : (1, "N"),
            "N·m" => isUs ? (phrase.TorquePerNm, phrase.TorqueUnit) : (1, "N·m"),
            "N/m" => isUs ? (0.0254 / 4.4482216152605, "lbf/in") : (1e-3, "N/mm"),
            "1" => (1, string.Empty),
            _ => (1, unit),
        };
        string number = Digits(value * factor);
        return (phrase.Language == Language.English ? number : number.Replace('.', ',')) + (shown.Length == 0 ? string.Empty : " " + shown);
    }

    private static string Digits(double value)
    {
        double size = Math.Abs(value);
        if (size is 0 or (>= 1e-3 and < 1e7))
        {
            int places = size is 0 or >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4;
            return value.ToString("0." + new string('#', places), CultureInfo.InvariantCulture);
        }

        return value.ToString("0.###E+0", CultureInfo.InvariantCulture);
    }
}
