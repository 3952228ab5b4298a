using Driveline.Reports.Pictures;

namespace Driveline.Reports.Simulations;

/// <summary>Where a panel and its numbers stand: the numbers at its right, or below it on a phone.</summary>
internal sealed class TraceLayout(PictureFrame frame)
{
    public PictureFrame Frame => frame;

    public double Left { get; } = frame.IsNarrow ? 50 : 92;

    public double Right { get; } = frame.IsNarrow ? frame.Width - frame.Margin : frame.Width - 190;

    public double PanelHeight { get; } = frame.IsNarrow ? 130 : 190;

    /// <summary>From panel to panel: name above, times below.</summary>
    public double PanelGap { get; } = 54;

    public double NoteSize { get; } = 13;
}
