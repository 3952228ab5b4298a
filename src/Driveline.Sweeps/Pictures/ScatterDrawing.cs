using System.Globalization;
using Driveline.Reports;
using Driveline.Reports.Ladders;
using Driveline.Reports.Verdicts;
using OxyPlot;

namespace Driveline.Sweeps.Pictures;

/// <summary>A point a row: an output over a factor.</summary>
internal sealed class ScatterDrawing
{
    private const int Most = 3000;

    private readonly StudyFrame frame;
    private readonly Phrase words;
    private readonly List<(double X, double Y)> points = [];
    private readonly long rows;
    private readonly string factor;
    private readonly string output;

    public ScatterDrawing(StudyResult result, int factor, int output, ReportOptions options)
    {
        words = StudyFrame.PhraseOf(options);
        rows = result.Rows;
        this.factor = result.Study.Factors[factor].Name;
        this.output = result.Plan.Outputs[output].Name;
        frame = new StudyFrame(result, options, words.Of(
            Phrase.Code("study.picture.scatter").With("output", this.output).With("factor", this.factor)));
        ReadOnlySpan<double> x = result.Kept.Factor(factor);
        ReadOnlySpan<double> y = result.Kept.Number(output);
        int step = Math.Max(1, (x.Length + Most - 1) / Most);
        for (int k = 0; k < x.Length; k += step)
        {
            if (double.IsFinite(y[k]))
            {
                points.Add((x[k], y[k]));
            }
        }
    }

    public string Lead => frame.Lead;

    public void Draw(LadderCanvas canvas)
    {
        frame.Draw(canvas);
        double top = frame.Top + 24;
        if (points.Count == 0)
        {
            StudyFrame.Nothing(canvas, words, top);
            return;
        }

        var x = new AxisScale(points.Min(p => p.X), points.Max(p => p.X), 110, StudyFrame.Right, 8);
        var y = new AxisScale(points.Min(p => p.Y), points.Max(p => p.Y), StudyFrame.Height - 80, top, 6);
        StudyFrame.Axes(canvas, x, y, factor, output);
        OxyColor color = OxyColor.FromAColor(110, LadderColors.Of(LadderRowKind.Work));
        foreach ((double px, double py) in points)
        {
            canvas.Box(x.At(px) - 2, y.At(py) - 2, 4, 4, color, OxyColors.Undefined, 0);
        }

        if (points.Count < rows)
        {
            canvas.Text(110, StudyFrame.Height - 20, words.Of(Phrase.Code("study.picture.rows")
                .With("shown", points.Count.ToString("N0", CultureInfo.InvariantCulture))
                .With("rows", rows.ToString("N0", CultureInfo.InvariantCulture))), 13, LadderColors.Faint, false, HorizontalAlignment.Left);
        }
    }
}
