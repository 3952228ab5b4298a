using System.Globalization;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Wording;

/// <summary>A quantity as people read it: rounded, with the unit of their system. Never used for data.</summary>
public static class QuantityWords
{
    /// <summary>The value in words, e.g. "1231 N·m" or "908 lbf·ft"; +∞ becomes "no known limit".</summary>
    /// <param name="si">The value in SI; +∞ means unbounded.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(double si, QuantityKind kind, UnitSystem units)
    {
        if (double.IsPositiveInfinity(si))
        {
            return "no known limit";
        }

        bool us = units == UnitSystem.UsCustomary;
        return kind switch
        {
            QuantityKind.Number => Significant.Digits(si, 3),
            QuantityKind.Count => si.ToString("F0", CultureInfo.InvariantCulture),
            QuantityKind.Torque => us ? Digits(si / (Si.PoundForce * Si.Foot), 3, "lbf·ft") : Digits(si, 3, "N·m"),
            QuantityKind.Length => us ? Digits(si / Si.Inch, 3, "in") : Digits(si * 1e3, 3, "mm"),
            QuantityKind.Stress => us ? Digits(si / (1e3 * Si.Psi), 3, "ksi") : Digits(si * 1e-6, 3, "MPa"),
            QuantityKind.SurfacePressure => us ? Digits(si / Si.Psi, 3, "psi") : Digits(si * 1e-3, 3, "kPa"),
            QuantityKind.Force => us ? Digits(si / Si.PoundForce, 3, "lbf") : Digits(si, 3, "N"),
            QuantityKind.Power => us ? Digits(si / Si.MechanicalHorsepower, 3, "hp") : Digits(si * 1e-3, 3, "kW"),
            QuantityKind.RotationalSpeed => Digits(si / Si.Rpm, 3, us ? "rpm" : "min⁻¹"),
            QuantityKind.Angle => Digits(si / Si.Degree, 3, "°"),
            QuantityKind.Inertia => us ? Digits(si / (Si.Pound * Si.Foot * Si.Foot), 3, "lb·ft²") : Digits(si, 3, "kg·m²"),
            QuantityKind.Energy => us ? Digits(si / (Si.PoundForce * Si.Foot), 3, "ft·lbf") : Digits(si, 3, "J"),
            QuantityKind.Time => Digits(si, 3, "s"),
            QuantityKind.Temperature => us ? Digits((si * 1.8) - 459.67, 3, "°F") : Digits(si - 273.15, 3, "°C"),
            QuantityKind.Probability => Probability(si),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A text has no quantity words."),
        };
    }

    private static string Digits(double value, int digits, string unit) => Significant.Digits(value, digits) + " " + unit;

    private static string Probability(double value) => value < 0.001 ? "less than 1 in 1000"
        : value > 0.999 ? "more than 999 in 1000"
        : Significant.Digits(value * 100, 2) + " %";
}
