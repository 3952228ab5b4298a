using Driveline.Cases.Results;
using Driveline.Reports;
using Driveline.Reports.Documents;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Sweeps.Pictures;

/// <summary>A bar a factor, from the output's median in its lowest tenth to that in its highest.</summary>
internal sealed class TornadoDrawing : StudyDrawing
{
    private const double RowHeight = 50;
    private const int Most = 20;

    private readonly SwingFigures[] swings;
    private readonly double middle;
    private readonly PictureKey key;

    public TornadoDrawing(StudyResult result, int output, ReportOptions options)
        : base(result, output, options, (words, name) => words.Of(Phrase.Code("study.picture.tornado").With("output", name)))
    {
        string asked = result.Plan.Outputs[output].Name;
        swings = [.. result.Figures.Tornado.Where(s => s.Output == asked && s.AtLow is { } low && s.AtHigh is { } high
            && double.IsFinite(low) && double.IsFinite(high)).Take(Most)];
        middle = result.Figures.Quantiles.First(q => q.Key == asked).Value.P50 ?? double.NaN;
        key = new PictureKey(Frame)
            .Add(26, Words.Of("study.picture.lowest"), (canvas, x, y) => Mark(canvas, x, y, SvgInk.Work))
            .Add(26, Words.Of("study.picture.highest"), (canvas, x, y) => Mark(canvas, x, y, SvgInk.Device));
    }

    public override double Height => Math.Ceiling(BarsTop + (Math.Max(swings.Length, 1) * RowHeight) + 66 + More(Output));

    private double BarsTop => Top + key.Height + 12;

    protected override void DrawInside(SvgCanvas canvas)
    {
        if (swings.Length == 0)
        {
            Nothing(canvas);
            return;
        }

        double top = BarsTop;
        double bottom = top + (swings.Length * RowHeight);
        double[] ends = [.. swings.SelectMany(s => new[] { s.AtLow!.Value, s.AtHigh!.Value })];
        var x = new AxisScale(ends.Min(), ends.Max(), Frame.Margin + 16, Right, TicksAcross);
        key.Draw(canvas, Top);
        Below(canvas, x, bottom, top);
        for (int k = 0; k < swings.Length; k++)
        {
            Bar(canvas, x, swings[k], top + (k * RowHeight));
        }

        if (double.IsFinite(middle))
        {
            canvas.Line(x.At(middle), top, x.At(middle), bottom, SvgInk.Ink, 1.6);
        }

        canvas.Line(x.At(x.Low), bottom, x.At(x.High), bottom, SvgInk.Ink, 1.2);
        Beneath(canvas, bottom + 42, Output);
    }

    private static void Mark(SvgCanvas canvas, double x, double y, SvgInk ink) => canvas.Box(x, y - 7, 26, 14, ink, SvgInk.None, 0);

    private void Bar(SvgCanvas canvas, AxisScale x, SwingFigures swing, double top)
    {
        double low = x.At(swing.AtLow!.Value);
        double high = x.At(swing.AtHigh!.Value);
        bool isBetween = middle >= Math.Min(swing.AtLow.Value, swing.AtHigh.Value)
            && middle <= Math.Max(swing.AtLow.Value, swing.AtHigh.Value);
        double half = isBetween ? x.At(middle) : (low + high) / 2;
        double y = top + 24;
        canvas.Text(x.At(x.Low) + 4, top + 12, CleanText.Name(swing.Factor), Frame.Detail, SvgInk.Ink, true, TextAlign.Start);
        canvas.Box(Math.Min(low, half), y, Math.Max(1, Math.Abs(half - low)), 18, SvgInk.Work, SvgInk.None, 0);
        canvas.Box(Math.Min(high, half), y, Math.Max(1, Math.Abs(high - half)), 18, SvgInk.Device, SvgInk.None, 0);
    }
}
