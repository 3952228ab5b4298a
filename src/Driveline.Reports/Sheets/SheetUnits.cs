using System.Globalization;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Reports.Verdicts;
using Driveline.Wording;

namespace Driveline.Reports.Sheets;

/// <summary>
/// The value of a step in the unit of the reader, to four digits, so that a sum can be followed by hand. US units are those in which the
/// formulas hold as they stand: an inertia in lb·ft·s².
/// </summary>
internal static class SheetUnits
{
    private const double FootPound = 1.3558179483314004;
    private const double PoundForce = 4.4482216152605;
    private const double Inch = 0.0254;

    /// <summary>The value of a line; a margin as it is shown everywhere.</summary>
    public static string Of(CalculationLine line, Phrase phrase) => line.Formula.Code is "guardMargin" or "workMargin"
        ? phrase.Quantity(line.Value, QuantityKind.Margin) : Of(line.Value, line.Formula.Unit, phrase);

    public static string Of(double value, string unit, Phrase phrase)
    {
        if (double.IsPositiveInfinity(value))
        {
            return phrase.Of("quantity.noKnownLimit");
        }

        (double per, string shown) = phrase.Units == DisplayUnits.UsCustomary ? Us(unit, phrase) : Metric(unit);
        string number = Digits(value / per);
        return (phrase.Language == Language.English ? number : number.Replace('.', ',')) + (shown.Length == 0 ? string.Empty : " " + shown);
    }

    private static (double Per, string Shown) Metric(string unit) => unit switch
    {
        "Pa" => (1e6, "MPa"),
        "m" => (1e-3, "mm"),
        "m²" => (1e-6, "mm²"),
        "m³" => (1e-9, "mm³"),
        "N/m" => (1e3, "N/mm"),
        "1" => (1, string.Empty),
        _ => (1, unit),
    };

    private static (double Per, string Shown) Us(string unit, Phrase phrase) => unit switch
    {
        "Pa" => (1e3 * PoundForce / (Inch * Inch), "ksi"),
        "m" => (Inch, "in"),
        "m²" => (Inch * Inch, "in²"),
        "m³" => (Inch * Inch * Inch, "in³"),
        "N" => (PoundForce, "lbf"),
        "N·m" => (1 / phrase.TorquePerNm, phrase.TorqueUnit),
        "N/m" => (PoundForce / Inch, "lbf/in"),
        "N·m/rad" => (FootPound, "lb·ft/rad"),
        "kg·m²" => (FootPound, "lb·ft·s²"),
        "J" => (FootPound, "ft·lb"),
        "W" => (FootPound, "ft·lb/s"),
        "W/m²" => (FootPound / (Inch * Inch), "ft·lb/(s·in²)"),
        "K" => (5.0 / 9, "°F"),
        "J/K" => (FootPound * 1.8, "ft·lb/°F"),
        "1" => (1, string.Empty),
        _ => (1, unit),
    };

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
