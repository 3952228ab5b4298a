using System.Globalization;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Wording;

/// <summary>A quantity as people read it: rounded, with the unit of their system. Never used for data.</summary>
public static class QuantityWords
{
    private const string FootPounds = "lb·ft";
    private const double GroupedFrom = 999.5;
    private const double LeastSeconds = 0.1;

    /// <summary>The value in English words, e.g. "1230 N·m" or "908 lb·ft"; +∞ becomes "no known limit".</summary>
    /// <param name="si">The value in SI; +∞ means unbounded.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(double si, QuantityKind kind, DisplayUnits units) => Of(si, kind, units, Language.English);

    /// <summary>The value in words of a language; unit symbols are the same in every language.</summary>
    /// <param name="si">The value in SI; +∞ means unbounded.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="language">The language, which decides the decimal sign.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind is a text, or no texts are held in that language.</exception>
    /// <example>0.0127 m in Spanish: "12,7 mm"; +∞: "sin límite conocido".</example>
    public static string Of(double si, QuantityKind kind, DisplayUnits units, Language language) =>
        Of(si, kind, units, Texts.In(language));

    /// <summary>A value in the words of texts, which may be the caller's own.</summary>
    /// <exception cref="ArgumentNullException">The texts are missing.</exception>
    public static string Of(double si, QuantityKind kind, DisplayUnits units, Texts texts)
    {
        Guard.NotNull(texts, nameof(texts));
        if (double.IsPositiveInfinity(si))
        {
            return texts.Of("quantity.noKnownLimit");
        }

        return kind == QuantityKind.Torque && units == DisplayUnits.UsCustomary && texts.Language == Language.English ? Grouped(si)
            : kind != QuantityKind.Probability ? WithDecimalSign(Invariant(si, kind, units), texts)
            : si < 0.001 ? texts.Of("quantity.fewerThanOneInThousand")
            : si > 0.999 ? texts.Of("quantity.allButOneInThousand")
            : WithDecimalSign(Significant.Digits(si * 100, 2), texts) + (texts.Language == Language.English ? "%" : " %");
    }

    /// <summary>A plain number in a language: the invariant format with the language's decimal sign.</summary>
    /// <param name="value">The number.</param>
    /// <param name="format">A .NET number format without group separators, e.g. "F2".</param>
    /// <param name="language">The language.</param>
    /// <exception cref="ArgumentNullException">The format is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No texts are held in that language.</exception>
    /// <example>1.5 as "F2" in Spanish: "1,50".</example>
    public static string Number(double value, string format, Language language) =>
        Number(value, format, Texts.In(language));

    /// <summary>A plain number by texts, which may be the caller's own.</summary>
    /// <param name="value">The number.</param>
    /// <param name="format">Its .NET format, such as "F2".</param>
    /// <param name="texts">The texts, which hold the decimal sign.</param>
    /// <exception cref="ArgumentNullException">The format or the texts are missing.</exception>
    public static string Number(double value, string format, Texts texts) => WithDecimalSign(
        value.ToString(Guard.NotNull(format, nameof(format)), CultureInfo.InvariantCulture), Guard.NotNull(texts, nameof(texts)));

    private static string Invariant(double si, QuantityKind kind, DisplayUnits units)
    {
        bool us = units == DisplayUnits.UsCustomary;
        return kind switch
        {
            QuantityKind.Number => Math.Abs(si) < 1000 && si == Math.Floor(si) ? si.ToString("F0", CultureInfo.InvariantCulture)
                : Significant.Digits(si, 3),
            QuantityKind.Margin => MarginDigits.Of(si),
            QuantityKind.Count => si.ToString("F0", CultureInfo.InvariantCulture),
            QuantityKind.Torque => us ? Digits(si / (Si.PoundForce * Si.Foot), 3, FootPounds) : Digits(si, 3, "N·m"),
            QuantityKind.Length => us ? InchWords.Of(si / Si.Inch) : Digits(si * 1e3, 3, "mm"),
            QuantityKind.Stress => us ? Digits(si / (1e3 * Si.Psi), 3, "ksi") : Digits(si * 1e-6, 3, "MPa"),
            QuantityKind.SurfacePressure => us ? Digits(si / Si.Psi, 3, "psi") : Digits(si * 1e-3, 3, "kPa"),
            QuantityKind.Force => us ? Digits(si / Si.PoundForce, 3, "lbf") : Digits(si, 3, "N"),
            QuantityKind.Power => us ? Digits(si / Si.MechanicalHorsepower, 3, "hp") : Digits(si * 1e-3, 3, "kW"),
            QuantityKind.RotationalSpeed => Digits(si / Si.Rpm, 3, us ? "rpm" : "min⁻¹"),
            QuantityKind.Angle => Significant.Digits(si / Si.Degree, 3) + "°",
            QuantityKind.Inertia => us ? Digits(si / (Si.Pound * Si.Foot * Si.Foot), 3, "lb·ft²") : Digits(si, 3, "kg·m²"),
            QuantityKind.Stiffness => us ? Digits(si / (Si.PoundForce * Si.Foot), 3, "lbf·ft/rad") : Digits(si, 3, "N·m/rad"),
            QuantityKind.Energy => us ? Digits(si / (Si.PoundForce * Si.Foot), 3, "ft·lbf") : Digits(si, 3, "J"),
            QuantityKind.Time => Math.Abs(si) is > 0 and < LeastSeconds ? Digits(si * 1e3, 3, "ms") : Digits(si, 3, "s"),
            QuantityKind.Temperature => us ? Digits((si * 1.8) - 459.67, 3, "°F") : Digits(si - 273.15, 3, "°C"),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A text has no quantity words."),
        };
    }

    // 1390 as 1,390: an American reads it so; in Spanish that comma would be the decimal sign.
    private static string Grouped(double si)
    {
        string digits = Significant.Digits(si / (Si.PoundForce * Si.Foot), 3);
        return (Math.Abs(si) >= GroupedFrom * Si.PoundForce * Si.Foot && digits.IndexOf('.') < 0
            ? double.Parse(digits, CultureInfo.InvariantCulture).ToString("N0", CultureInfo.InvariantCulture) : digits) + " " + FootPounds;
    }

    private static string Digits(double value, int digits, string unit) => Significant.Digits(value, digits) + " " + unit;

    private static string WithDecimalSign(string invariant, Texts texts) =>
        invariant.IndexOf('.') < 0 ? invariant : invariant.Replace(".", texts.Of("quantity.decimalSign"));
}
