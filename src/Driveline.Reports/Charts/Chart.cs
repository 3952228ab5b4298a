using Driveline.Reports.Pictures;
using Driveline.Reports.Simulations;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Charts;

/// <summary>Lines and bands over one axis, with a sentence above and a key below.</summary>
internal sealed class Chart : IPicture
{
    private readonly PictureFrame frame;
    private readonly Phrase phrase;
    private readonly IReadOnlyList<string> lead;
    private readonly List<Action<SvgCanvas>> shapes = [];
    private readonly PictureKey key;
    private readonly TraceScale x;
    private readonly TraceScale y;
    private readonly double left;
    private readonly double top;
    private readonly double bottom;

    public Chart(PictureFrame frame, Phrase phrase, string lead, string description, ChartAxis across, ChartAxis up)
    {
        this.frame = frame;
        this.phrase = phrase;
        Title = lead;
        Description = description;
        Across = across;
        Up = up;
        this.lead = TextWidths.Lines(lead, frame.Inner, frame.Name, true);
        key = new PictureKey(frame);
        left = frame.IsNarrow ? 54 : 92;
        top = frame.Margin + (this.lead.Count * SvgCanvas.LineHeight(frame.Name)) + 34;
        bottom = top + (frame.IsNarrow ? 210 : 300);
        x = TraceScale.Between(across.Low, across.High, left, frame.Width - frame.Margin - 8, frame.IsNarrow ? 4 : 8);
        y = TraceScale.Between(up.Low, up.High, bottom, top, 5);
    }

    public string Title { get; }

    public string Description { get; }

    public double Width => frame.Width;

    public double Height => Math.Ceiling(bottom + 56 + key.Height + 12);

    private ChartAxis Across { get; }

    private ChartAxis Up { get; }

    /// <summary>The ground from one value of the axis to another.</summary>
    public Chart Zone(double from, double to, SvgInk ink, string words)
    {
        shapes.Add(c => c.Box(x.At(from), top, Math.Max(1, x.At(to) - x.At(from)), bottom - top, ink, SvgInk.None, 0));
        key.Add(26, words, (c, at, middle) => c.Box(at, middle - 7, 26, 14, ink, SvgInk.Faint, 0.6));
        return this;
    }

    /// <summary>The ground between a low and a high line.</summary>
    public Chart Band(IReadOnlyList<(double X, double Low, double High)> points, SvgInk ink, string words)
    {
        (double, double)[] edge =
            [.. points.Select(p => (x.At(p.X), y.At(p.High))), .. points.Reverse().Select(p => (x.At(p.X), y.At(p.Low)))];
        shapes.Add(c => c.Polygon(edge, ink, SvgInk.None, 0));
        key.Add(26, words, (c, at, middle) => c.Box(at, middle - 7, 26, 14, ink, SvgInk.Faint, 0.6));
        return this;
    }

    public Chart Line(IReadOnlyList<(double X, double Y)> points, SvgInk ink, LineDash dash, string words)
    {
        shapes.Add(c => c.Path([.. points.Select(p => (x.At(p.X), y.At(p.Y)))], ink, 2.4, dash));
        key.Add(28, words, (c, at, middle) => c.Path([(at, middle), (at + 28, middle)], ink, 2.4, dash));
        return this;
    }

    /// <summary>A level over the whole width.</summary>
    public Chart Level(double value, SvgInk ink, LineDash dash, string words) =>
        value < Up.Low || value > Up.High ? this : Line([(Across.Low, value), (Across.High, value)], ink, dash, words);

    /// <summary>A place on the axis.</summary>
    public Chart Mark(double at, SvgInk ink, LineDash dash, string words) =>
        at < Across.Low || at > Across.High ? this : Line([(at, Up.Low), (at, Up.High)], ink, dash, words);

    public void Draw(SvgCanvas canvas)
    {
        canvas.Column(frame.Margin, frame.Margin, lead, frame.Name, SvgInk.Ink, true);
        canvas.Text(frame.Margin, top - 16, Up.Words, frame.Detail, SvgInk.Ink);
        foreach (double tick in y.Ticks)
        {
            canvas.Line(left, y.At(tick), frame.Width - frame.Margin - 8, y.At(tick), SvgInk.Grid, 1);
            canvas.Text(left - 8, y.At(tick), phrase.Number(tick, "0.####"), frame.Small, SvgInk.Ink, false, TextAlign.End);
        }

        shapes.ForEach(draw => draw(canvas));
        foreach (double tick in x.Ticks)
        {
            canvas.Line(x.At(tick), bottom, x.At(tick), bottom + 5, SvgInk.Ink, 1);
            canvas.Text(x.At(tick), bottom + 16, phrase.Number(tick, "0.####"), frame.Small, SvgInk.Ink, false, TextAlign.Middle);
        }

        canvas.Line(left, top, left, bottom, SvgInk.Ink, 1.2);
        canvas.Line(left, bottom, frame.Width - frame.Margin - 8, bottom, SvgInk.Ink, 1.2);
        canvas.Text(frame.Width / 2, bottom + 38, Across.Words, frame.Detail, SvgInk.Ink, false, TextAlign.Middle);
        key.Draw(canvas, bottom + 52);
    }
}
