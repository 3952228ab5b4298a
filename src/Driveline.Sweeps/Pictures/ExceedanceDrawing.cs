using Driveline.Reports;
using Driveline.Reports.Ladders;
using Driveline.Reports.Verdicts;
using OxyPlot;

namespace Driveline.Sweeps.Pictures;

/// <summary>The share of the rows in which an output is above a value.</summary>
internal sealed class ExceedanceDrawing
{
    private const int Steps = 400;

    private readonly StudyFrame frame;
    private readonly Phrase words;
    private readonly double[] values;
    private readonly string output;

    public ExceedanceDrawing(StudyResult result, int output, ReportOptions options)
    {
        words = StudyFrame.PhraseOf(options);
        this.output = result.Plan.Outputs[output].Name;
        frame = new StudyFrame(result, options, words.Of(Phrase.Code("study.picture.exceedance").With("output", this.output)));
        values = [.. result.Kept.Number(output).ToArray().Where(v => !double.IsNaN(v)).Order()];
    }

    public string Lead => frame.Lead;

    public void Draw(LadderCanvas canvas)
    {
        frame.Draw(canvas);
        double top = frame.Top + 24;
        double[] finite = [.. values.Where(double.IsFinite)];
        if (finite.Length == 0)
        {
            StudyFrame.Nothing(canvas, words, top);
            return;
        }

        var x = new AxisScale(finite[0], finite[^1], 110, StudyFrame.Right, 8);
        var y = new AxisScale(0, 1, StudyFrame.Height - 80, top, 5);
        StudyFrame.Axes(canvas, x, y, output, words.Of("study.picture.share"));
        var points = new List<ScreenPoint>();
        for (int k = 0; k <= Steps; k++)
        {
            double value = x.Low + ((x.High - x.Low) * k / Steps);
            points.Add(new ScreenPoint(x.At(value), y.At((double)Above(value) / values.Length)));
        }

        canvas.Path(points, LadderColors.Of(LadderRowKind.Work), 2.4, false);
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
