using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Simulations;

/// <summary>
/// Lays the picture out: title, one panel an element with its torque over time, its limit and the trip, one time axis, key.
/// </summary>
internal sealed class TraceDrawing
{
    private const int Samples = 1001;

    private readonly Phrase phrase;
    private readonly PictureFrame frame;
    private readonly IReadOnlyList<string> title;
    private readonly IReadOnlyList<string> lead;
    private readonly SimulationTraces traces;
    private readonly TracePanel[] panels;
    private readonly PictureKey key;
    private readonly bool isShort;

    public TraceDrawing(SimulationCheck check, ReportOptions options, PictureFrame frame, CancellationToken stop)
    {
        this.frame = frame;
        phrase = new Phrase(options.Texts, options.Units);
        string what = phrase.Of("simulate.title." + check.Simulation.Event);
        title = !frame.HasHeadline ? [] : TextWidths.Lines(
            options.Title is null ? what : CleanText.Title(options.Title) + ": " + what, frame.Inner, frame.Name, false);
        Title = SimulationLead.Of(check, phrase)
            + (check.Simulation.CanRun && check.Simulation.Assumed.Count > 0 ? " " + phrase.Of("simulate.undecided") : string.Empty);
        lead = !frame.HasHeadline ? [] : TextWidths.Lines(Title, frame.Inner, frame.Headline * 0.9, true);
        traces = SimulationTraces.OfPeaks(check, Samples, stop);
        IReadOnlyList<SimulationTrace> shown = traces.All.Count > 0 ? traces.Shown : [];
        isShort = traces.LengthS < 1;
        var layout = new TraceLayout(frame);
        panels = shown.Count == 0 ? [] : PanelsOf(check, shown, layout, new TraceScale(
            0, Shown(traces.LengthS), layout.Left, layout.Right, frame.IsNarrow ? 4 : 8));
        key = KeyOf();
    }

    /// <summary>What the picture says, for those who cannot see it.</summary>
    public string Title { get; }

    public string Description => phrase.Of("simulate.picture.description");

    public double Height => Math.Ceiling(
        PanelsTop + (panels.Length == 0 ? 60 : panels.Sum(p => p.Height) + 24 + key.Height) + 16);

    private double PanelsTop => !frame.HasHeadline ? 28 : frame.Margin + (title.Count * SvgCanvas.LineHeight(frame.Name)) + 4
        + (lead.Count * SvgCanvas.LineHeight(frame.Headline * 0.9)) + 16;

    public void Draw(SvgCanvas canvas)
    {
        double y = frame.Margin;
        y += canvas.Column(frame.Margin, y, title, frame.Name, SvgInk.Faint, false) + 4;
        canvas.Column(frame.Margin, y, lead, frame.Headline * 0.9, SvgInk.Ink, true);
        double top = PanelsTop;
        if (panels.Length == 0)
        {
            canvas.Text(
                frame.Width / 2, top + 24, phrase.Of("simulate.picture.none"), frame.Name, SvgInk.Faint, false, TextAlign.Middle);
            return;
        }

        foreach (TracePanel panel in panels)
        {
            panel.Draw(canvas, top);
            top += panel.Height;
        }

        canvas.Text(frame.Width / 2, top + 6, phrase.Of(Phrase.Code("simulate.picture.time").With("unit", isShort ? "ms" : "s")),
            frame.Detail, SvgInk.Ink, false, TextAlign.Middle);
        key.Draw(canvas, top + 24);
    }

    private TracePanel[] PanelsOf(
        SimulationCheck check, IReadOnlyList<SimulationTrace> shown, TraceLayout layout, TraceScale time)
    {
        double? trip = check.With?.TripTime is { } at ? Shown(at.Seconds) : null;
        return
        [
            .. shown.Select((trace, k) => new TracePanel(trace, layout, time, phrase)
            {
                Trip = trip,
                TrippedDevice = k == 0 ? check.With?.TrippedDevice?.Name : null,
                Samples = Samples,
            }),
        ];
    }

    private PictureKey KeyOf() => new PictureKey(frame)
        .Add(28, phrase.Of("simulate.picture.with"), (c, x, y) => c.Line(x, y, x + 28, y, SvgInk.Work, 2.2))
        .Add(28, phrase.Of("simulate.picture.without"), (c, x, y) => c.Path([(x, y), (x + 28, y)], SvgInk.Overlap, 1.6, true))
        .Add(26, phrase.Of("simulate.picture.damagedAt"), (c, x, y) =>
        {
            c.Box(x, y - 7, 26, 14, SvgInk.LimitGround, SvgInk.None, 0);
            c.Line(x, y, x + 26, y, SvgInk.Part, 2);
        });

    private double Shown(double seconds) => isShort ? seconds * 1000 : seconds;
}
