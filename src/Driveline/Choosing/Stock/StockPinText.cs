using System.Text.RegularExpressions;
using Driveline.Fasteners;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>Reads pins and rods as a stock names them: a standard and size, or a diameter and a material.</summary>
internal static class StockPinText
{
    // Without a unit a whole number is millimeters, and a fraction inches; what is less may be either.
    private const double LeastBareMm = 3;

    private static readonly Regex Words = new(
        @"\b(?:shear|clevis|cross|dowel|plain|parallel|cylindrical|solid|round|cold[- ]drawn|pins?|rods?|bars?|stock|dia\.?|diameter"
        + @"|pasador(?:es)?|barra|varilla|redonda?)\b|[øØ⌀]",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex PinWord = new(
        @"\b(?:pins?|rods?|bars?|pasador(?:es)?|barra|varilla)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Sized = new(
        @"^\s*(?<size>(?:[0-9]+[ -])?[0-9]+/[0-9]+|[0-9]+(?:[.,][0-9]+)?)\s*(?<unit>mm|in\b\.?|"")?"
        + @"(?:\s*x\s*(?<length>[0-9][0-9 ./,-]*)\s*(?:mm|in\b\.?|"")?)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>True when the words say that it is a pin or a rod.</summary>
    public static bool IsNamed(string designation, string grade) =>
        SpringPin.TryParse(designation, out _, out _) || PinWord.IsMatch(designation) || PinWord.IsMatch(grade);

    /// <summary>The pin or rod, and its length where the designation tells it; null when it is none, or not understood.</summary>
    public static ShearBolt? Read(string designation, string grade, out double? lengthM, out bool isInch)
    {
        lengthM = null;
        isInch = false;
        if (SpringPin.TryParse(designation, out SpringPin? spring, out _))
        {
            return ShearBolt.SpringPin(spring);
        }

        string name = Words.Replace(designation, " ");
        if (Sized.Match(name) is not { Success: true } sized || MaterialOf(grade) is not { } material)
        {
            return null;
        }

        string size = sized.Groups["size"].Value;
        string unit = sized.Groups["unit"].Value;
        isInch = unit.Length == 0 ? size.Contains('/') : !unit.Equals("mm", StringComparison.OrdinalIgnoreCase);
        double? meters = isInch ? StockLengths.Inches(size) : StockLengths.Number(size) / 1000;
        if (meters is not > 0 || (!isInch && unit.Length == 0 && meters < LeastBareMm / 1000))
        {
            return null;
        }

        string length = sized.Groups["length"].Value.Trim();
        lengthM = length.Length == 0 ? null : isInch ? StockLengths.Inches(length) : StockLengths.Number(length) / 1000;
        return ShearBolt.Pin(Length.FromMeters(meters.Value), material);
    }

    /// <summary>A rod material, or a measured hardness.</summary>
    public static FastenerMaterial? MaterialOf(string grade) => RodMaterial.TryParse(grade, out RodMaterial? rod, out _)
        ? FastenerMaterial.Rod(rod)
        : Hardness.TryParse(grade, out Hardness? hardness, out _) ? FastenerMaterial.OfMeasuredHardness(hardness) : null;
}
