using System.Globalization;

namespace Driveline.Quantities;

/// <summary>Rounding to significant digits for people to read, invariant culture, never in exponent form.</summary>
internal static class Significant
{
    private const int MostDecimals = 15;
    private const double MostWhole = 1e15;

    private static readonly string[] Formats =
        ["F0", "F1", "F2", "F3", "F4", "F5", "F6", "F7", "F8", "F9", "F10", "F11", "F12", "F13", "F14", "F15"];

    /// <summary>The value with the given number of significant digits, e.g. 1231, 12.70, 0.01588.</summary>
    public static string Digits(double value, int digits)
    {
        if (value == 0 || !Guard.IsFinite(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        int magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
        if (magnitude >= digits)
        {
            double step = Math.Pow(10, magnitude - digits);
            double whole = Math.Round(value / step, MidpointRounding.AwayFromZero) * step;
            return Math.Abs(whole) < MostWhole ? ((long)whole).ToString(CultureInfo.InvariantCulture)
                : whole.ToString("F0", CultureInfo.InvariantCulture);
        }

        return value.ToString(Formats[Math.Min(digits - magnitude, MostDecimals)], CultureInfo.InvariantCulture);
    }
}
