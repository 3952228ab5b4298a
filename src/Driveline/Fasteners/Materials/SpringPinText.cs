using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Reads spring pins as people write them: a standard, a diameter, perhaps a length and a material.</summary>
internal static class SpringPinText
{
    private static readonly Regex Standard = new(
        @"\b(?:EN\s*)?(?:ISO\s*(?<iso>8752|13337|8748|8750|8751)|(?<asme>(?:ASME\s*)?B\s*18\.8\.2))\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    private static readonly Regex Size = new(
        @"(?:(?<a>[0-9]+)/(?<b>[0-9]+)|(?<d>[0-9]+(?:[.,][0-9]+)?))\s*(?<unit>mm|in\.?|inch|"")?(?:\s*[x×]\s*[0-9]+(?:[.,/][0-9]+)?)?",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    private static readonly Regex AusteniticWord = new(
        @"\b(?:austenitic|stainless|A|A[24]|30302|30304)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    private static readonly Regex CopperWord = new(
        @"\b(?:beryllium|copper|BeCu)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    private static readonly Regex DowelWord = new(@"\bdowel\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    public static bool TryParse(string? text, [NotNullWhen(true)] out SpringPin? pin, [NotNullWhen(false)] out string? problem)
    {
        pin = null;
        string plain = text is { Length: <= 80 } ? text.Trim().Replace('″', '"').Replace('”', '"') : string.Empty;
        Match standard = Standard.Match(plain);
        string rest = standard.Success ? plain.Remove(standard.Index, standard.Length) : plain;
        Match size = Size.Match(rest);
        if (!standard.Success || !size.Success)
        {
            problem = "A pin is a standard and a size, such as ISO 8752 8 mm; got \"" + text?.Trim() + "\". Standards held: "
                + string.Join(", ", SpringPins.All.Select(p => p.Standard).Distinct()) + ".";
            return false;
        }

        string name = standard.Groups["iso"].Success ? "ISO " + standard.Groups["iso"].Value : "ASME B18.8.2";
        double diameterM = DiameterOf(size, name.StartsWith("ASME", StringComparison.Ordinal));
        MaterialFamily family = AusteniticWord.IsMatch(rest) ? MaterialFamily.StainlessSteel
            : CopperWord.IsMatch(rest) ? MaterialFamily.CopperAlloy
            : MaterialFamily.SpringSteel;
        bool dowel = DowelWord.IsMatch(rest);
        SpringPin[] candidates = SpringPins.All
            .Where(p => p.Standard == name && p.Family == family && dowel == (p.Kind == SpringPinKind.HardenedDowel))
            .ToArray();
        pin = Array.Find(candidates, p => Math.Abs(p.DiameterM - diameterM) < 1e-6);
        problem = pin is not null ? null
            : "\"" + text!.Trim() + "\" is not among the pins held here; held of that standard and material: "
                + (candidates.Length == 0 ? "none" : string.Join(", ", candidates.Select(p => p.Size))) + ".";
        return pin is not null;
    }

    public static double InchFraction(string text)
    {
        string[] parts = text.Split('/');
        double top = double.Parse(parts[0], CultureInfo.InvariantCulture);
        return parts.Length == 1 ? top : top / double.Parse(parts[1], CultureInfo.InvariantCulture);
    }

    private static double DiameterOf(Match size, bool inchByDefault)
    {
        bool fraction = size.Groups["a"].Success;
        double value = fraction
            ? Number(size.Groups["a"].Value) / Number(size.Groups["b"].Value)
            : Number(size.Groups["d"].Value);
        string unit = size.Groups["unit"].Value;
        bool inch = unit.Length == 0 ? inchByDefault || fraction : !unit.Equals("mm", StringComparison.OrdinalIgnoreCase);
        return value * (inch ? Si.Inch : 1e-3);
    }

    private static double Number(string text) => double.Parse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture);
}
