using Driveline.Protection;
using Driveline.Reports.Pictures;
using Driveline.Reports.Simulations;

namespace Driveline.Reports;

/// <summary>The torque over time of a simulated engagement or strike as an SVG picture.</summary>
/// <remarks>
/// One panel for each device and for the parts nearest to their damage: torque at the element's own input with protection (full line)
/// and without (dashed), the torque that damages it as a shaded band, and the moment at which a device acts. Names from a case are
/// escaped. Classes begin with "dl-". The same check gives the same bytes.
/// </remarks>
public static class SimulationPicture
{
    /// <summary>The picture as an SVG document in metric units.</summary>
    public static string Svg(SimulationCheck check) => Svg(check, ReportOptions.Default);

    /// <summary>The picture as an SVG document with a font of its own.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Svg(SimulationCheck check, ReportOptions options)
    {
        TraceDrawing drawing = Drawing(check, options, null);
        return SvgDocument.Whole(options.PictureWidth, drawing.Height, drawing.Title, drawing.Description, drawing.Draw);
    }

    /// <summary>The picture as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Fragment(SimulationCheck check, ReportOptions options) => Fragment(check, options, null);

    /// <summary>The same in a frame of its own.</summary>
    internal static string Fragment(SimulationCheck check, ReportOptions options, PictureFrame? frame)
    {
        TraceDrawing drawing = Drawing(check, options, frame);
        return SvgDocument.Fragment(
            frame?.Width ?? options.PictureWidth, drawing.Height, drawing.Title, drawing.Description, drawing.Draw);
    }

    private static TraceDrawing Drawing(SimulationCheck check, ReportOptions options, PictureFrame? frame) => new(
        check ?? throw new ArgumentNullException(nameof(check)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth));
}
