using System.Text;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Ladders;
using OxyPlot;

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
        "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + Element(verdict, options) + "\n";

    /// <summary>The picture as an SVG element to put into a page.</summary>
    internal static string Element(ProtectionVerdict verdict, ReportOptions options)
    {
        var drawing = new LadderDrawing(
            verdict ?? throw new ArgumentNullException(nameof(verdict)), options ?? throw new ArgumentNullException(nameof(options)));
        using var stream = new MemoryStream();
        using (var context = new SvgRenderContext(stream, LadderDrawing.Width, drawing.Height, false, new SvgTextMeasurer(), LadderColors.Paper))
        {
            drawing.Draw(new LadderCanvas(context));
            context.Complete();
            context.Flush();
        }

        string svg = Encoding.UTF8.GetString(stream.ToArray()).Replace("\r\n", "\n").Trim();
        svg = svg.Substring(svg.IndexOf("<svg", StringComparison.Ordinal));
        int end = svg.IndexOf('>');
        string description = HtmlRendering.Escape(drawing.Description);
        return svg.Substring(0, end) + " role=\"img\"><title>" + description + "</title>" + svg.Substring(end + 1);
    }
}
