using System.Globalization;
using Driveline.Reports;
using Driveline.Reports.Documents;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;
using Driveline.Sweeps.Outputs;

namespace Driveline.Sweeps.Pictures;

/// <summary>A point a row: an output over a factor.</summary>
internal sealed class ScatterDrawing : StudyDrawing
{
    private const int Most = 3000;

    private readonly List<(double X, double Y)> points = [];
    private readonly long rows;
    private readonly string factor;

    public ScatterDrawing(StudyResult result, int factor, int output, ReportOptions options)
        : base(result, output, options, (words, name) => words.Of(Phrase.Code("study.picture.scatter").With("output", name)
            .With("factor", CleanText.Name(result.Study.Factors[factor].Name))))
    {
        rows = result.Rows;
        this.factor = CleanText.Name(StudyUnits.OfFactor(result.Study, result.Study.Factors[factor]));
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

    public override double Height => Math.Ceiling(Top + (Frame.IsNarrow ? 400 : 520) + More(Output) + More(factor));

    protected override void DrawInside(SvgCanvas canvas)
    {
        if (points.Count == 0)
        {
            Nothing(canvas);
            return;
        }

        var x = new AxisScale(points.Min(p => p.X), points.Max(p => p.X), Left, Right, TicksAcross);
        var y = new AxisScale(points.Min(p => p.Y), points.Max(p => p.Y), Height - 84 - More(factor), Top + 24 + More(Output), 6);
        Axes(canvas, x, y, factor, Output);
        foreach ((double px, double py) in points)
        {
            canvas.Box(x.At(px) - 1.5, y.At(py) - 1.5, 3, 3, SvgInk.Work, SvgInk.None, 0);
        }

        if (points.Count < rows)
        {
            canvas.Text(Frame.Margin, Height - 18, Words.Of(Phrase.Code("study.picture.rows")
                .With("shown", points.Count.ToString("N0", CultureInfo.InvariantCulture))
                .With("rows", rows.ToString("N0", CultureInfo.InvariantCulture))), Frame.Small, SvgInk.Faint);
        }
    }
}
