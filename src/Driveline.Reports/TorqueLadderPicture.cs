using Driveline.Protection;
using Driveline.Reports.Ladders;
using Driveline.Reports.Pictures;

namespace Driveline.Reports;

/// <summary>The torque ladder of a verdict as an SVG picture a tractor owner can read.</summary>
/// <remarks>
/// One row a torque, lowest first: its name and numbers beside its bar from lowest to highest, or above it where the picture is
/// narrower than 640 px, all referred to the tractor's PTO. An end nobody knows is an open arrow; a torque nobody knows is a dashed row,
/// never left out. Two last rows name the room or the overlap between work and protection and between protection and the part worst off.
/// Names from a case are escaped. Classes begin with "dl-". The same verdict gives the same bytes.
/// </remarks>
public static class TorqueLadderPicture
{
    /// <summary>The picture as an SVG document in metric units.</summary>
    public static string Svg(ProtectionVerdict verdict) => Svg(verdict, ReportOptions.Default);

    /// <summary>The picture as an SVG document with a font of its own.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Svg(ProtectionVerdict verdict, ReportOptions options)
    {
        LadderDrawing drawing = Drawing(verdict, options, null);
        return SvgDocument.Whole(options.PictureWidth, drawing.Height, drawing.Title, drawing.Description, drawing.Draw);
    }

    /// <summary>The picture as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Fragment(ProtectionVerdict verdict, ReportOptions options) => Fragment(verdict, options, null);

    /// <summary>The same in a frame of its own.</summary>
    internal static string Fragment(ProtectionVerdict verdict, ReportOptions options, PictureFrame? frame)
    {
        LadderDrawing drawing = Drawing(verdict, options, frame);
        return SvgDocument.Fragment(
            frame?.Width ?? options.PictureWidth, drawing.Height, drawing.Title, drawing.Description, drawing.Draw);
    }

    private static LadderDrawing Drawing(ProtectionVerdict verdict, ReportOptions options, PictureFrame? frame) => LadderDrawing.Of(
        verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));
}
