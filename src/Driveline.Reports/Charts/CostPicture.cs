using Driveline.Advice;
using Driveline.Reports.Pictures;

namespace Driveline.Reports.Charts;

/// <summary>What an owner's options cost over the years, as a picture.</summary>
/// <remarks>Title and description say what is drawn; classes begin with "dl-"; below 640 px the layout is that of a phone.</remarks>
public static class CostPicture
{
    /// <summary>The money spent on each option by the end of each year; null when too little is known to draw it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Years(IReadOnlyList<OwnershipCost> costs, ReportOptions options) =>
        YearsDrawing(costs, options, null) is { } picture ? SvgDocument.Whole(picture) : null;

    /// <summary>The same as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? YearsFragment(IReadOnlyList<OwnershipCost> costs, ReportOptions options) =>
        YearsDrawing(costs, options, null) is { } picture ? SvgDocument.Fragment(picture) : null;

    internal static IPicture? YearsDrawing(IReadOnlyList<OwnershipCost> costs, ReportOptions options, PictureFrame? frame) => CostChart.Of(
        costs ?? throw new ArgumentNullException(nameof(costs)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));
}
