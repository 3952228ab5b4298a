using Driveline.Cases.Results;
using Driveline.Reports;
using Driveline.Reports.Documents;
using Driveline.Reports.Ladders;
using Driveline.Reports.Verdicts;
using OxyPlot;

namespace Driveline.Sweeps.Pictures;

/// <summary>A bar a factor, from the output's median in its lowest tenth to that in its highest.</summary>
internal sealed class TornadoDrawing
{
    private const double RowHeight = 50;
    private const int Most = 20;

    private static readonly OxyColor LowColor = LadderColors.Of(LadderRowKind.Work);
    private static readonly OxyColor HighColor = LadderColors.Of(LadderRowKind.Device);

    private readonly StudyFrame frame;
    private readonly Phrase words;
    private readonly SwingFigures[] swings;
    private readonly double middle;
    private readonly string output;

    public TornadoDrawing(StudyResult result, int output, ReportOptions options)
    {
        words = StudyFrame.PhraseOf(options);
        this.output = result.Plan.Outputs[output].Name;
        frame = new StudyFrame(result, options, words.Of(Phrase.Code("study.picture.tornado").With("output", this.output)));
        swings = [.. result.Figures.Tornado.Where(s => s.Output == this.output && s.AtLow is { } low && s.AtHigh is { } high
            && double.IsFinite(low) && double.IsFinite(high)).Take(Most)];
        middle = result.Figures.Quantiles.First(q => q.Key == this.output).Value.P50 ?? double.NaN;
    }

    public string Lead => frame.Lead;

    public double Height => Math.Ceiling(frame.Top + 40 + (Math.Max(swings.Length, 1) * RowHeight) + 80);

    public void Draw(LadderCanvas canvas)
    {
        frame.Draw(canvas);
        double top = frame.Top + 36;
        double bottom = top + (Math.Max(swings.Length, 1) * RowHeight);
        if (swings.Length == 0)
        {
            StudyFrame.Nothing(canvas, words, top);
            return;
        }

        double[] ends = [.. swings.SelectMany(s => new[] { s.AtLow!.Value, s.AtHigh!.Value })];
        var x = new AxisScale(ends.Min(), ends.Max(), StudyFrame.Margin + 16, StudyFrame.Right, 8);
        StudyFrame.Below(canvas, x, bottom, top);
        Key(canvas, top - 16);
        for (int k = 0; k < swings.Length; k++)
        {
            Bar(canvas, x, swings[k], top + (k * RowHeight));
        }

        if (double.IsFinite(middle))
        {
            canvas.Line(x.At(middle), top, x.At(middle), bottom, LadderColors.Ink, 1.6);
        }

        canvas.Line(x.At(x.Low), bottom, x.At(x.High), bottom, LadderColors.Ink, 1.2);
        canvas.Text(x.At(x.High), bottom + 44, output, 14, LadderColors.Ink, true, HorizontalAlignment.Right);
    }

    private static void Bar(LadderCanvas canvas, AxisScale x, SwingFigures swing, double top)
    {
        double low = x.At(swing.AtLow!.Value);
        double high = x.At(swing.AtHigh!.Value);
        double half = (low + high) / 2;
        double y = top + 24;
        canvas.Text(x.At(x.Low) + 4, top + 12, CleanText.Name(swing.Factor), 14, LadderColors.Ink, true, HorizontalAlignment.Left);
        canvas.Box(Math.Min(low, half), y, Math.Max(1, Math.Abs(half - low)), 18, LowColor, OxyColors.Undefined, 0);
        canvas.Box(Math.Min(high, half), y, Math.Max(1, Math.Abs(high - half)), 18, HighColor, OxyColors.Undefined, 0);
    }

    private void Key(LadderCanvas canvas, double y)
    {
        double at = StudyFrame.Margin + 16;
        foreach ((OxyColor color, string code) in new[] { (LowColor, "study.lowest"), (HighColor, "study.highest") })
        {
            string text = words.Of("study.factor") + " " + words.Of(code);
            canvas.Box(at, y - 8, 26, 14, color, OxyColors.Undefined, 0);
            canvas.Text(at + 34, y, text, 14, LadderColors.Ink, false, HorizontalAlignment.Left);
            at += 60 + SvgTextMeasurer.Width(text, 14);
        }
    }
}
