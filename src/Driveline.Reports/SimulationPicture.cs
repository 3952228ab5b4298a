using Driveline.Protection;
using Driveline.Reports.Ladders;
using Driveline.Reports.Simulations;

namespace Driveline.Reports;

/// <summary>The torque over time of a simulated engagement or strike as an SVG picture.</summary>
/// <remarks>
/// One panel for each device and for the parts nearest to their damage: torque at the element's own input with protection (full line)
/// and without (dashed), the torque that damages it as a shaded band, and the moment at which a device acts. Names from a case are
/// escaped. The same check gives the same bytes.
/// </remarks>
public static class SimulationPicture
{
    /// <summary>The picture as an SVG document in metric units.</summary>
    public static string Svg(SimulationCheck check) => Svg(check, ReportOptions.Default);

    /// <summary>The picture as an SVG document.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Svg(SimulationCheck check, ReportOptions options)
    {
        var drawing = new TraceDrawing(
            check ?? throw new ArgumentNullException(nameof(check)), options ?? throw new ArgumentNullException(nameof(options)));
        return SvgDocument.Whole(SvgDocument.Element(TraceDrawing.Width, drawing.Height, drawing.Description, drawing.Draw));
    }
}
