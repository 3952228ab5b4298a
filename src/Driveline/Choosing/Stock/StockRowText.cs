using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Fasteners;
using Driveline.ShearBolts;
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

    private static readonly Regex Pitched = new(
        @"^(?:m\s*[0-9]|[^x]*[0-9]\s*-\s*[0-9]+\s*(?:x|$|un))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>The bolt, pin or rod of a row; null with the code of the reason.</summary>
    public static StockItem? Read(StockCells row, out string? code)
    {
        code = null;
        string designation = row.Designation.Replace('×', 'x').Replace('″', '"').Replace('”', '"').Trim();
        if (Part(designation, row.Grade, out double? lengthM, out bool isMetric, out code) is not { } bolt)
        {
            return null;
        }

        StockItem item = StockItem.Of(bolt).WithTag(row.Line)
            .WithSku(row.Sku.Length > 0 ? row.Sku : null)
            .WithCoating(row.Coating.Length > 0 ? row.Coating : null);
        double? stated = row.Length.Length > 0 ? StockLengths.Meters(row.Length, isMetric) : lengthM;
        if (row.Length.Length > 0 && stated is null)
        {
            code = ChoosingFindings.RowLength;
            return null;
        }

        item = stated is > 0 and { } meters ? item.WithLength(Length.FromMeters(meters)) : item;
        return Priced(item, row, out code);
    }

    private static ShearBolt? Part(string designation, string grade, out double? lengthM, out bool isMetric, out string? code)
    {
        code = null;
        (ScrewThread? thread, lengthM) = Sized(designation);
        isMetric = thread is MetricThread;
        if (BoltGrade.TryParse(grade, out BoltGrade? named, out _) && !StockPinText.IsNamed(designation, string.Empty))
        {
            code = thread is null ? ChoosingFindings.RowSize : named.TryAt(thread, out _) ? null : ChoosingFindings.RowGradeNotAtSize;
            return code is null ? ShearBolt.Of(thread!, named) : null;
        }

        if (thread is not null && IsThreaded(designation, grade) && RodMaterial.TryParse(grade, out RodMaterial? material, out _))
        {
            return ShearBolt.Of(thread, FastenerMaterial.Rod(material));
        }

        if (StockPinText.Read(designation, grade, out double? pinLengthM, out bool isInch) is { } pin)
        {
            lengthM = pinLengthM;
            isMetric = !isInch;
            return pin;
        }

        code = StockPinText.IsNamed(designation, grade) ? ChoosingFindings.RowPin
            : thread is null ? ChoosingFindings.RowSize
            : ChoosingFindings.RowGrade;
        return null;
    }

    // A size with a pitch is cut as a thread; without one it may be round bar, unless the material is sold as bolts.
    private static bool IsThreaded(string designation, string grade) => !StockPinText.IsNamed(designation, string.Empty)
        && (Pitched.IsMatch(designation)
            || CultureInfo.InvariantCulture.CompareInfo.IndexOf(grade, "bolt", CompareOptions.OrdinalIgnoreCase) >= 0);

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

    private static (ScrewThread? Thread, double? LengthM) Sized(string designation)
    {
        if (Metric.Match(designation) is { Success: true } metric)
        {
            bool hasThird = metric.Groups["third"].Success;
            double second = StockLengths.Number(metric.Groups["second"].Value);
            bool isPitch = metric.Groups["second"].Success && (hasThird || second <= LargestPitchMm);
            string name = metric.Groups["thread"].Value + (isPitch ? "x" + metric.Groups["second"].Value : string.Empty);
            double? length = hasThird ? StockLengths.Number(metric.Groups["third"].Value)
                : metric.Groups["second"].Success && !isPitch ? second
                : null;
            return (ThreadOf(name), length / 1000);
        }

        Match inch = Inch.Match(designation);
        return inch.Success
            ? (ThreadOf(inch.Groups["thread"].Value.Trim()), StockLengths.Inches(inch.Groups["length"].Value.Trim()))
            : (null, null);
    }

    private static ScrewThread? ThreadOf(string text) => ScrewThread.TryParse(text, out ScrewThread? thread, out _) ? thread : null;
}
