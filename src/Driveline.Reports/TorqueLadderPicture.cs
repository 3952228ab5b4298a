using Driveline.Protection;
using Driveline.Reports.Ladders;

namespace Driveline.Reports;

/// <summary>The torque ladder of a verdict as an SVG picture a tractor owner can read.</summary>
/// <remarks>
/// One row a torque, lowest first: its name and numbers at the left, its bar from lowest to highest at the right, all referred
/// to the tractor's PTO. An end nobody knows is an open arrow; a torque nobody knows is a dashed row, never left out. Two last
/// rows name the room or the overlap between work and protection and between protection and the part worst off.
/// Names from a case are escaped. The same verdict gives the same bytes.
/// </remarks>
public static class TorqueLadderPicture
{
    /// <summary>The picture as an SVG document in metric units.</summary>
    public static string Svg(ProtectionVerdict verdict) => Svg(verdict, ReportOptions.Default);

    /// <summary>The picture as an SVG document.</summary>
    /// <exception cref="ArgumentNullException">The verdict or the options are missing.</exception>
    public static string Svg(ProtectionVerdict verdict, ReportOptions options) =>
        SvgDocument.Whole(Element(verdict, options));

    /// <summary>The picture as an SVG element to put into a page.</summary>
    internal static string Element(ProtectionVerdict verdict, ReportOptions options)
    {
        var drawing = new LadderDrawing(
            verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)));
        return SvgDocument.Element(LadderDrawing.Width, drawing.Height, drawing.Description, drawing.Draw);
    }
}
