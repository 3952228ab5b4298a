using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Fasteners;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>Reads one row of a stock file as parts systems write it.</summary>
internal static class StockRowText
{
    // Up to M36 no standard pitch is above 4 mm: what is larger is a length.
    private const double LargestPitchMm = 4;

    private static readonly Regex Metric = new(
        @"^(?<thread>m\s*[0-9.]+)(?:\s*[x-]\s*(?<second>[0-9.]+))?(?:\s*x\s*(?<third>[0-9.]+))?(?![0-9./])",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Inch = new(
        @"^(?<thread>[^x]+?)(?:\s*x\s*(?<length>[0-9][0-9 ./-]*))?\s*(?:""|in\b)?(?:\s+[^0-9].*)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Fraction = new(
        @"^(?:(?<whole>[0-9]+)[ -]+)?(?<top>[0-9]+)/(?<bottom>[0-9]+)$", RegexOptions.CultureInvariant);

    /// <summary>The bolt of a row; null with the code of the reason.</summary>
    public static StockItem? Read(StockCells row, out string? code)
    {
        code = null;
        string designation = row.Designation.Replace('×', 'x').Replace('″', '"').Replace('”', '"').Trim();
        if (IsPin(designation, row.Grade))
        {
            code = ChoosingFindings.RowPin;
            return null;
        }

        (ScrewThread? thread, double? lengthM) = Sized(designation);
        if (thread is null)
        {
            code = ChoosingFindings.RowSize;
            return null;
        }

        if (!BoltGrade.TryParse(row.Grade, out BoltGrade? grade, out _))
        {
            code = RodMaterial.TryParse(row.Grade, out _, out _) ? ChoosingFindings.RowRod : ChoosingFindings.RowGrade;
            return null;
        }

        if (!grade.TryAt(thread, out _))
        {
            code = ChoosingFindings.RowGradeNotAtSize;
            return null;
        }

        StockItem item = StockItem.Of(thread, grade).WithTag(row.Line)
            .WithSku(row.Sku.Length > 0 ? row.Sku : null)
            .WithCoating(row.Coating.Length > 0 ? row.Coating : null);
        double? stated = row.Length.Length > 0 ? Meters(row.Length, thread is MetricThread) : lengthM;
        if (row.Length.Length > 0 && stated is null)
        {
            code = ChoosingFindings.RowLength;
            return null;
        }

        item = stated is > 0 and { } meters ? item.WithLength(Length.FromMeters(meters)) : item;
        return Priced(item, row, out code);
    }

    private static StockItem? Priced(StockItem item, StockCells row, out string? code)
    {
        code = null;
        if (row.Price.Length == 0)
        {
            return item;
        }

        const NumberStyles Plain = NumberStyles.AllowDecimalPoint;
        if (!double.TryParse(row.Price.Replace(',', '.'), Plain, CultureInfo.InvariantCulture, out double price) || price > 1e9)
        {
            code = ChoosingFindings.RowPrice;
            return null;
        }

        return row.Currency.Length > 0 ? item.WithPrice(price, row.Currency) : item.WithPrice(price);
    }

    private static bool IsPin(string designation, string grade) => SpringPin.TryParse(designation, out _, out _)
        || Regex.IsMatch(designation + " " + grade, @"\b(pin|pins|pasador)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static (ScrewThread? Thread, double? LengthM) Sized(string designation)
    {
        if (Metric.Match(designation) is { Success: true } metric)
        {
            bool hasThird = metric.Groups["third"].Success;
            double second = Number(metric.Groups["second"].Value);
            bool isPitch = metric.Groups["second"].Success && (hasThird || second <= LargestPitchMm);
            string name = metric.Groups["thread"].Value + (isPitch ? "x" + metric.Groups["second"].Value : string.Empty);
            double? length = hasThird ? Number(metric.Groups["third"].Value) : metric.Groups["second"].Success && !isPitch ? second : null;
            return (ThreadOf(name), length / 1000);
        }

        Match inch = Inch.Match(designation);
        return inch.Success
            ? (ThreadOf(inch.Groups["thread"].Value.Trim()), Inches(inch.Groups["length"].Value.Trim()))
            : (null, null);
    }

    private static ScrewThread? ThreadOf(string text) => ScrewThread.TryParse(text, out ScrewThread? thread, out _) ? thread : null;

    private static double? Meters(string text, bool isMetric)
    {
        string plain = text.Replace("\"", " in").Trim().ToLowerInvariant();
        bool isInch = plain.EndsWith("in", StringComparison.Ordinal);
        bool isMm = plain.EndsWith("mm", StringComparison.Ordinal);
        string number = isInch || isMm ? plain.Substring(0, plain.Length - 2).Trim() : plain;
        return isInch || (!isMm && !isMetric) ? Inches(number) : Number(number) is > 0 and var mm ? mm / 1000 : null;
    }

    private static double? Inches(string text)
    {
        if (Fraction.Match(text) is { Success: true } parts && Number(parts.Groups["bottom"].Value) is > 0 and var bottom)
        {
            double whole = parts.Groups["whole"].Success ? Number(parts.Groups["whole"].Value) : 0;
            return (whole + (Number(parts.Groups["top"].Value) / bottom)) * 0.0254;
        }

        return Number(text) is > 0 and var inches ? inches * 0.0254 : null;
    }

    private static double Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : 0;
}
