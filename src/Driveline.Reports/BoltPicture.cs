using Driveline.Chains;
using Driveline.Protection;
using Driveline.Reports.Charts;
using Driveline.Reports.Pictures;
using Driveline.Reports.Sketches;

namespace Driveline.Reports;

/// <summary>A shear bolt in pictures: the bolt with the planes that cut it, and the grades that go into its hole.</summary>
/// <remarks>Title and description say what is drawn; classes begin with "dl-"; below 640 px the layout is that of a phone.</remarks>
public static class BoltPicture
{
    /// <summary>The bolt in its joint with its planes, drawn from the numbers; null when too little is known to draw it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Planes(ShearBoltDevice device, ReportOptions options) =>
        PlanesDrawing(device, options, null) is { } picture ? SvgDocument.Whole(picture) : null;

    /// <summary>The same as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? PlanesFragment(ShearBoltDevice device, ReportOptions options) =>
        PlanesDrawing(device, options, null) is { } picture ? SvgDocument.Fragment(picture) : null;

    internal static IPicture? PlanesDrawing(ShearBoltDevice device, ReportOptions options, PictureFrame? frame) => BoltSketch.Of(
        (device ?? throw new ArgumentNullException(nameof(device))).BreakTorque,
        options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));

    /// <summary>The grades in one hole beside the work and the part most at risk; null when too little is known to draw it.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? Grades(ProtectionVerdict verdict, ReportOptions options) =>
        GradesDrawing(verdict, options, null) is { } picture ? SvgDocument.Whole(picture) : null;

    /// <summary>The same as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string? GradesFragment(ProtectionVerdict verdict, ReportOptions options) =>
        GradesDrawing(verdict, options, null) is { } picture ? SvgDocument.Fragment(picture) : null;

    internal static IPicture? GradesDrawing(ProtectionVerdict verdict, ReportOptions options, PictureFrame? frame) => GradeChart.Of(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));
}
