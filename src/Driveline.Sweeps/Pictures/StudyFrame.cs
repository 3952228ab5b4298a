using Driveline.Reports;
using Driveline.Reports.Documents;
using Driveline.Reports.Ladders;
using Driveline.Reports.Verdicts;
using OxyPlot;

namespace Driveline.Sweeps.Pictures;

/// <summary>What the pictures of a study share: title, lead, axes.</summary>
internal sealed class StudyFrame
{
    public const double Width = 1000;
    public const double Height = 640;
    public const double Margin = 24;
    public const double Right = Width - 40;
    public const double LeadSize = 22;

    private readonly string title;

    public StudyFrame(StudyResult result, ReportOptions options, string lead)
    {
        title = CleanText.Title(options.Title ?? result.Study.Title);
        Lead = lead;
    }

    public string Lead { get; }

    /// <summary>Where the picture itself may begin.</summary>
    public double Top => Margin + 24 + LadderCanvas.ColumnHeight(Width - (2 * Margin), Lead, LeadSize, true) + 24;

    public static Phrase PhraseOf(ReportOptions options) => new(Wording.Texts.In(options.Language), options.Units);

    public void Draw(LadderCanvas canvas)
    {
        canvas.Text(Margin, Margin + 8, title, 16, LadderColors.Faint, false, HorizontalAlignment.Left);
        canvas.Column(Margin, Margin + 24, Width - (2 * Margin), Lead, LeadSize, LadderColors.Ink, true);
    }

    /// <summary>Says that there is nothing to draw.</summary>
    public static void Nothing(LadderCanvas canvas, Phrase words, double top) =>
        canvas.Text(Width / 2, top, words.Of("study.picture.none"), 16, LadderColors.Faint, false, HorizontalAlignment.Center);

    /// <summary>Both axes with their grid.</summary>
    public static void Axes(LadderCanvas canvas, AxisScale x, AxisScale y, string xName, string yName)
    {
        double left = x.At(x.Low);
        double right = x.At(x.High);
        double bottom = y.At(y.Low);
        double top = y.At(y.High);
        foreach (double tick in y.Ticks)
        {
            canvas.Line(left, y.At(tick), right, y.At(tick), LadderColors.Grid, 1);
            canvas.Text(left - 8, y.At(tick), StudyText.Number(tick), 13, LadderColors.Ink, false, HorizontalAlignment.Right);
        }

        Below(canvas, x, bottom, top);
        canvas.Line(left, top, left, bottom, LadderColors.Ink, 1.2);
        canvas.Line(left, bottom, right, bottom, LadderColors.Ink, 1.2);
        canvas.Text(left, top - 16, yName, 14, LadderColors.Ink, true, HorizontalAlignment.Left);
        canvas.Text(right, bottom + 44, xName, 14, LadderColors.Ink, true, HorizontalAlignment.Right);
    }

    /// <summary>The lower axis with its grid.</summary>
    public static void Below(LadderCanvas canvas, AxisScale x, double bottom, double top)
    {
        foreach (double tick in x.Ticks)
        {
            canvas.Line(x.At(tick), top, x.At(tick), bottom, LadderColors.Grid, 1);
            canvas.Line(x.At(tick), bottom, x.At(tick), bottom + 5, LadderColors.Ink, 1);
            canvas.Text(x.At(tick), bottom + 18, StudyText.Number(tick), 13, LadderColors.Ink, false, HorizontalAlignment.Center);
        }
    }
}
