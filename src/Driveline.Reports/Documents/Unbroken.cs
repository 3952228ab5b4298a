using System.Text.RegularExpressions;

namespace Driveline.Reports.Documents;

/// <summary>Keeps a number and its unit on one line.</summary>
internal static class Unbroken
{
    private const string Blank = "\u00A0";

    private static readonly Regex BeforeUnit = new(
        @"(?<=\d) (?=(?:N·m|lb·ft|ft·lbf|lbf|lb|mm|cm|m|in|ft|ksi|psi|MPa|kPa|kW|hp|rpm|min⁻¹|s|ms|°C|°F|%|J|N|kg·m²|lb·ft²"
            + @"|USD|EUR)(?![\p{L}\p{N}]))"
            + @"|(?<=\d) (?=\d+/\d)",
        RegexOptions.CultureInvariant);

    /// <summary>The text with a no-break space before each unit, and between inches and their fraction.</summary>
    public static string Of(string text) => BeforeUnit.Replace(text, Blank);
}
