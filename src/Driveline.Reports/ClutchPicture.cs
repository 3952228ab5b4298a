using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Clutches;
using Driveline.Quantities;
using Driveline.Reports.Charts;
using Driveline.Reports.Pictures;
using Driveline.Reports.Sketches;

namespace Driveline.Reports;

/// <summary>A slip clutch in pictures: its setting, how hot it gets, its pack in section.</summary>
/// <remarks>Title and description say what is drawn; classes begin with "dl-"; below 640 px the layout is that of a phone.</remarks>
public static class ClutchPicture
{
    /// <summary>The torque at which it slips over the length of its springs; null when too little is known to draw it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Setting(SlipTorque torque, ClutchWindow? window, TorqueBand? manuals, ReportOptions options) =>
        SettingDrawing(torque, window, manuals, options, null) is { } picture ? SvgDocument.Whole(picture) : null;

    /// <summary>The same as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? SettingFragment(SlipTorque torque, ClutchWindow? window, TorqueBand? manuals, ReportOptions options) =>
        SettingDrawing(torque, window, manuals, options, null) is { } picture ? SvgDocument.Fragment(picture) : null;

    internal static IPicture? SettingDrawing(
        SlipTorque torque, ClutchWindow? window, TorqueBand? manuals, ReportOptions options, PictureFrame? frame) =>
        (torque ?? throw new ArgumentNullException(nameof(torque))).Clutch is { } clutch
            ? SettingChart.Of(torque, clutch, window, manuals, options ?? throw new ArgumentNullException(nameof(options)),
                frame ?? PictureFrame.Of(options.PictureWidth))
            : null;

    /// <summary>How hot its faces get while it slips against a blocked machine; null when too little is known to draw it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Temperature(ClutchReview review, ReportOptions options) =>
        TemperatureDrawing(review, options, null) is { } picture ? SvgDocument.Whole(picture) : null;

    /// <summary>The same as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? TemperatureFragment(ClutchReview review, ReportOptions options) =>
        TemperatureDrawing(review, options, null) is { } picture ? SvgDocument.Fragment(picture) : null;

    internal static IPicture? TemperatureDrawing(ClutchReview review, ReportOptions options, PictureFrame? frame) => HeatChart.Of(
        review ?? throw new ArgumentNullException(nameof(review)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));

    /// <summary>Its pack in half section, drawn from the numbers; null when too little is known to draw it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Section(DiscClutch clutch, ReportOptions options) =>
        SectionDrawing(clutch, options, null) is { } picture ? SvgDocument.Whole(picture) : null;

    /// <summary>The same as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? SectionFragment(DiscClutch clutch, ReportOptions options) =>
        SectionDrawing(clutch, options, null) is { } picture ? SvgDocument.Fragment(picture) : null;

    internal static IPicture? SectionDrawing(DiscClutch clutch, ReportOptions options, PictureFrame? frame) => ClutchSketch.Of(
        clutch ?? throw new ArgumentNullException(nameof(clutch)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));
}
