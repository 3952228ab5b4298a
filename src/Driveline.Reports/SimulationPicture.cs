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
    public static string Svg(SimulationCheck check, ReportOptions options) => Svg(check, options, CancellationToken.None);

    /// <summary>The same, until it is stopped: it runs the simulation once more with and once more without protection.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string Svg(SimulationCheck check, ReportOptions options, CancellationToken stop)
    {
        TraceDrawing drawing = Drawing(check, options, null, stop);
        return SvgDocument.Whole(options.PictureWidth, drawing.Height, drawing.Title, drawing.Description, drawing.Draw);
    }

    /// <summary>The picture as an SVG element for a page of the caller's, in the font and the colour scheme of that page.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Fragment(SimulationCheck check, ReportOptions options) => Fragment(check, options, CancellationToken.None);

    /// <summary>The same, until it is stopped.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string Fragment(SimulationCheck check, ReportOptions options, CancellationToken stop) =>
        Fragment(check, options, null, stop);

    /// <summary>The same in a frame of its own.</summary>
    internal static string Fragment(SimulationCheck check, ReportOptions options, PictureFrame? frame, CancellationToken stop)
    {
        TraceDrawing drawing = Drawing(check, options, frame, stop);
        return SvgDocument.Fragment(
            frame?.Width ?? options.PictureWidth, drawing.Height, drawing.Title, drawing.Description, drawing.Draw);
    }

    private static TraceDrawing Drawing(
        SimulationCheck check, ReportOptions options, PictureFrame? frame, CancellationToken stop) => new(
        check ?? throw new ArgumentNullException(nameof(check)), options ?? throw new ArgumentNullException(nameof(options)),
        frame ?? PictureFrame.Of(options.PictureWidth), stop);
}
