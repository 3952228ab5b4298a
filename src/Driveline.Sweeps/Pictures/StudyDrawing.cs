using Driveline.Reports;
using Driveline.Reports.Documents;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Pictures;

/// <summary>What the pictures of a study share: title, lead, axes, at any width.</summary>
internal abstract class StudyDrawing
{
    private readonly string title;
    private readonly IReadOnlyList<string> lines;

    protected StudyDrawing(StudyResult result, int output, ReportOptions options, Func<Phrase, string, string> lead)
    {
        Words = new Phrase(options.Texts, options.Units);
        Frame = PictureFrame.Of(options.PictureWidth);
        Output = CleanText.Name(StudyUnits.OfOutput(result.Plan.Outputs[output]));
        title = CleanText.Title(options.Title ?? result.Study.Title);
        Lead = lead(Words, CleanText.Name(result.Plan.Outputs[output].Name));
        lines = TextWidths.Lines(Lead, Frame.Inner, Frame.Headline, true);
        TitleLines = TextWidths.Lines(title, Frame.Inner, Frame.Detail, false);
    }

    public string Lead { get; }

    public abstract double Height { get; }

    protected Phrase Words { get; }

    protected PictureFrame Frame { get; }

    protected string Output { get; }

    /// <summary>Where the picture itself may begin, above it the name of an upward axis.</summary>
    protected double Top => Frame.Margin + (TitleLines.Count * SvgCanvas.LineHeight(Frame.Detail)) + 8
        + (lines.Count * SvgCanvas.LineHeight(Frame.Headline)) + 20;

    protected double Left => Frame.IsNarrow ? 64 : 110;

    protected double Right => Frame.Width - Frame.Margin - 12;

    protected int TicksAcross => Frame.IsNarrow ? 4 : 8;

    private IReadOnlyList<string> TitleLines { get; }

    public string Svg() => SvgDocument.Whole(Frame.Width, Height, title, Lead, Draw);

    protected abstract void DrawInside(SvgCanvas canvas);

    /// <summary>How much higher a picture is for an axis whose name needs more than one line.</summary>
    protected double More(string axis) => (Named(axis).Count - 1) * SvgCanvas.LineHeight(Frame.Detail);

    /// <summary>The name of an axis, its last line at a height.</summary>
    protected void Above(SvgCanvas canvas, double y, string name)
    {
        IReadOnlyList<string> all = Named(name);
        double first = y - More(name);
        for (int k = 0; k < all.Count; k++)
        {
            canvas.Text(Frame.Margin, first + (k * SvgCanvas.LineHeight(Frame.Detail)), all[k], Frame.Detail, SvgInk.Ink, true,
                TextAlign.Start);
        }
    }

    /// <summary>The name of a lower axis, its first line at a height.</summary>
    protected void Beneath(SvgCanvas canvas, double y, string name)
    {
        IReadOnlyList<string> all = Named(name);
        for (int k = 0; k < all.Count; k++)
        {
            canvas.Text(Right, y + (k * SvgCanvas.LineHeight(Frame.Detail)), all[k], Frame.Detail, SvgInk.Ink, true, TextAlign.End);
        }
    }

    /// <summary>Says that there is nothing to draw.</summary>
    protected void Nothing(SvgCanvas canvas) =>
        canvas.Text(Frame.Margin, Top + 16, Words.Of("study.picture.none"), Frame.Name, SvgInk.Faint);

    /// <summary>Both axes with their grid.</summary>
    protected void Axes(SvgCanvas canvas, AxisScale x, AxisScale y, string xName, string yName)
    {
        double bottom = y.At(y.Low);
        double top = y.At(y.High);
        foreach (double tick in y.Ticks)
        {
            canvas.Line(Left, y.At(tick), Right, y.At(tick), SvgInk.Grid, 1);
            canvas.Text(Left - 8, y.At(tick), Tick(tick), Frame.Small, SvgInk.Ink, false, TextAlign.End);
        }

        Below(canvas, x, bottom, top);
        canvas.Line(Left, top, Left, bottom, SvgInk.Ink, 1.2);
        canvas.Line(Left, bottom, Right, bottom, SvgInk.Ink, 1.2);
        Above(canvas, top - 16, yName);
        Beneath(canvas, bottom + 42, xName);
    }

    /// <summary>The lower axis with its grid.</summary>
    protected void Below(SvgCanvas canvas, AxisScale x, double bottom, double top)
    {
        foreach (double tick in x.Ticks)
        {
            canvas.Line(x.At(tick), top, x.At(tick), bottom, SvgInk.Grid, 1);
            canvas.Line(x.At(tick), bottom, x.At(tick), bottom + 5, SvgInk.Ink, 1);
            canvas.Text(x.At(tick), bottom + 18, Tick(tick), Frame.Small, SvgInk.Ink, false, TextAlign.Middle);
        }
    }

    private IReadOnlyList<string> Named(string axis) => TextWidths.Lines(axis, Frame.Inner - 12, Frame.Detail, true);

    private string Tick(double value) => value == 0 || Math.Abs(value) is >= 1e-4 and < 1e9 ? Words.Number(value, "0.#####")
        : Words.Number(value, "0.###E+0");

    private void Draw(SvgCanvas canvas)
    {
        double used = canvas.Column(Frame.Margin, Frame.Margin, TitleLines, Frame.Detail, SvgInk.Faint, false);
        canvas.Column(Frame.Margin, Frame.Margin + used + 8, lines, Frame.Headline, SvgInk.Ink, true);
        DrawInside(canvas);
    }
}
