using System.Globalization;
using System.Text.RegularExpressions;

namespace Driveline.Choosing;

/// <summary>Lengths and diameters as a stock writes them.</summary>
internal static class StockLengths
{
    private static readonly Regex Fraction = new(
        @"^(?:(?<whole>[0-9]+)[ -]+)?(?<top>[0-9]+)/(?<bottom>[0-9]+)$", RegexOptions.CultureInvariant);

    /// <summary>A length with or without its unit, m; null when it is not understood.</summary>
    public static double? Meters(string text, bool isMetric)
    {
        string plain = text.Replace("\"", " in").Trim().ToLowerInvariant();
        bool isInch = plain.EndsWith("in", StringComparison.Ordinal);
        bool isMm = plain.EndsWith("mm", StringComparison.Ordinal);
        string number = isInch || isMm ? plain.Substring(0, plain.Length - 2).Trim() : plain;
        return isInch || (!isMm && !isMetric) ? Inches(number) : Number(number) is > 0 and var mm ? mm / 1000 : null;
    }

    /// <summary>Inches with a fraction or a point, m; null when it is not understood.</summary>
    public static double? Inches(string text)
    {
        if (Fraction.Match(text) is { Success: true } parts && Number(parts.Groups["bottom"].Value) is > 0 and var bottom)
        {
            double whole = parts.Groups["whole"].Success ? Number(parts.Groups["whole"].Value) : 0;
            return (whole + (Number(parts.Groups["top"].Value) / bottom)) * 0.0254;
        }

        return Number(text) is > 0 and var inches ? inches * 0.0254 : null;
    }

    /// <summary>A plain number with a point or a comma; 0 when it is none.</summary>
    public static double Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : 0;
}
