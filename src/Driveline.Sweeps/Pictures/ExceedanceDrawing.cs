using Driveline.Reports;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Sweeps.Pictures;

/// <summary>The share of the rows in which an output is above a value.</summary>
internal sealed class ExceedanceDrawing : StudyDrawing
{
    private const int Steps = 400;

    private readonly double[] values;

    public ExceedanceDrawing(StudyResult result, int output, ReportOptions options)
        : base(result, output, options, (words, name) => words.Of(Phrase.Code("study.picture.exceedance").With("output", name))) =>
        values = [.. result.Kept.Number(output).ToArray().Where(v => !double.IsNaN(v)).Order()];

    public override double Height => Math.Ceiling(Top + (Frame.IsNarrow ? 360 : 480) + More(Output));

    protected override void DrawInside(SvgCanvas canvas)
    {
        double[] finite = [.. values.Where(double.IsFinite)];
        if (finite.Length == 0)
        {
            Nothing(canvas);
            return;
        }

        var x = new AxisScale(finite[0], finite[^1], Left, Right, TicksAcross);
        var y = new AxisScale(0, 1, Height - 64 - More(Output), Top + 24, 5);
        Axes(canvas, x, y, Output, Words.Of("study.picture.share"));
        var path = new SlimPath(Steps);
        for (int k = 0; k <= Steps; k++)
        {
            double value = x.Low + ((x.High - x.Low) * k / Steps);
            path.Add(x.At(value), y.At((double)Above(value) / values.Length));
        }

        canvas.Path(path.Done(), SvgInk.Work, 2.4, false);
    }

    private int Above(double value)
    {
        int low = 0;
        int high = values.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = values[middle] > value ? (low, middle) : (middle + 1, high);
        }

        return values.Length - low;
    }
}
