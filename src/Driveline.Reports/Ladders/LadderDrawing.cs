using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;
using OxyPlot;

namespace Driveline.Reports.Ladders;

/// <summary>Lays the picture out: title, one row a torque with its words at the left and its bar at the right, axis, key.</summary>
internal sealed class LadderDrawing
{
    public const double Width = 1000;

    private const double Margin = 24;
    private const double WordsWidth = 366;
    private const double BarsLeft = 412;
    private const double BarsRight = Width - 40;
    private const double NameSize = 16;
    private const double DetailSize = 14;
    private const double BarHeight = 24;
    private const double RowGap = 16;

    // A torque of one value still needs to be seen.
    private const double ThinBar = 5;

    private readonly Phrase phrase;
    private readonly string? title;
    private readonly string headline;
    private readonly LeadTone tone;
    private readonly string answers;
    private readonly IReadOnlyList<LadderRow> rows;
    private readonly IReadOnlyList<LadderRow> gaps;
    private readonly LadderScale scale;

    public LadderDrawing(ProtectionVerdict verdict, ReportOptions options)
    {
        phrase = new Phrase(Wording.Texts.In(options.Language), options.Units);
        title = options.Title is null ? null : CleanText.Title(options.Title);
        headline = AnswerSentences.Headline(verdict, phrase);
        tone = LeadTones.Of(verdict);
        answers = phrase.Of("report.guards") + " " + phrase.Of("answer." + verdict.Guards) + ".   "
            + phrase.Of("report.quiet") + " " + phrase.Of("answer." + verdict.Quiet) + ".";
        rows = LadderRows.Of(verdict, phrase);
        gaps = LadderGaps.Of(verdict, phrase);
        scale = new LadderScale(rows, BarsLeft, BarsRight);
    }

    /// <summary>What the picture says, for those who cannot see it.</summary>
    public string Description => headline + " " + phrase.Of("ladder.description");

    public double Height => Math.Ceiling(RowsTop + rows.Concat(gaps).Sum(RowHeight) + 122);

    private double RowsTop => Margin + (title is null ? 0 : 24)
        + LadderCanvas.ColumnHeight(Width - (2 * Margin), headline, 24, true) + 48;

    public void Draw(LadderCanvas canvas)
    {
        double y = Margin;
        if (title is not null)
        {
            canvas.Text(Margin, y + 8, title, 16, LadderColors.Faint, false, HorizontalAlignment.Left);
            y += 24;
        }

        canvas.Box(8, y, 8, LadderCanvas.ColumnHeight(Width - (2 * Margin), headline, 24, true), LadderColors.Of(tone),
            OxyColors.Undefined, 0);
        y += canvas.Column(Margin, y, Width - (2 * Margin), headline, 24, LadderColors.Ink, true);
        canvas.Text(Margin, y + 14, answers, 16, LadderColors.Ink, false, HorizontalAlignment.Left);

        double top = RowsTop;
        double ladderBottom = top + rows.Sum(RowHeight);
        double bottom = ladderBottom + gaps.Sum(RowHeight);
        DrawColumns(canvas, top, bottom);
        DrawAxis(canvas, top, bottom);
        double rowTop = top;
        foreach (LadderRow row in rows.Concat(gaps))
        {
            if (row.IsBetween && ReferenceEquals(row, gaps[0]))
            {
                canvas.Line(Margin, rowTop, Width - Margin, rowTop, LadderColors.Faint, 1);
            }

            DrawRow(canvas, row, rowTop);
            rowTop += RowHeight(row);
        }

        DrawKey(canvas, bottom + 76);
    }

    private static double RowHeight(LadderRow row) => RowGap + Math.Max(
        BarHeight + 8,
        LadderCanvas.ColumnHeight(WordsWidth, row.Name, NameSize, true)
            + LadderCanvas.ColumnHeight(WordsWidth, row.Detail, DetailSize, false));

    private void DrawColumns(LadderCanvas canvas, double top, double bottom)
    {
        foreach (LadderRow gap in gaps.Where(g => g.IsKnown && scale.HasTorque))
        {
            OxyColor fill = gap.Kind == LadderRowKind.Room ? LadderColors.RoomColumn : LadderColors.OverlapColumn;
            canvas.Box(scale.X(gap.Low), top, scale.X(gap.High) - scale.X(gap.Low), bottom - top, fill, OxyColors.Undefined, 0);
        }
    }

    private void DrawAxis(LadderCanvas canvas, double top, double bottom)
    {
        if (!scale.HasTorque)
        {
            canvas.Text((BarsLeft + BarsRight) / 2, bottom + 24, phrase.Of("ladder.noTorque"), 15, LadderColors.Faint, false,
                HorizontalAlignment.Center);
            return;
        }

        foreach (double tick in scale.Ticks)
        {
            canvas.Line(scale.X(tick), top, scale.X(tick), bottom, LadderColors.Grid, 1);
            canvas.Text(scale.X(tick), bottom + 16, phrase.Number(tick, "0.####"), 13, LadderColors.Ink, false, HorizontalAlignment.Center);
        }

        canvas.Line(BarsLeft, bottom, BarsRight, bottom, LadderColors.Ink, 1.5);
        string axis = phrase.Of(Phrase.Code("ladder.axis").With("unit", phrase.TorqueUnit));
        canvas.Text((BarsLeft + BarsRight) / 2, bottom + 40, axis, 14, LadderColors.Ink, false, HorizontalAlignment.Center);
    }

    private void DrawRow(LadderCanvas canvas, LadderRow row, double top)
    {
        double y = top + (RowGap / 2);
        OxyColor words = row.Kind is LadderRowKind.Overlap or LadderRowKind.NoRoom ? LadderColors.Of(row.Kind) : LadderColors.Ink;
        y += canvas.Column(Margin, y, WordsWidth, row.Name, NameSize, words, true);
        canvas.Column(Margin, y, WordsWidth, row.Detail, DetailSize, words, false);
        double barTop = top + ((RowHeight(row) - BarHeight) / 2);
        if (!row.IsKnown)
        {
            canvas.DashedBox(BarsLeft, barTop, BarsRight - BarsLeft, BarHeight, LadderColors.Of(row.Kind));
            canvas.Text((BarsLeft + BarsRight) / 2, barTop + (BarHeight / 2), MarkOf(row), 16, LadderColors.Of(row.Kind), true,
                HorizontalAlignment.Center);
        }
        else if (row.IsBetween)
        {
            DrawBetween(canvas, row, barTop);
        }
        else
        {
            DrawBar(canvas, row, barTop);
        }
    }

    private string MarkOf(LadderRow row) => row.Kind switch
    {
        LadderRowKind.Room or LadderRowKind.Overlap => phrase.Of("ladder.atPlace." + row.Kind),
        LadderRowKind.NoRoom => "!",
        _ => "?",
    };

    private void DrawBetween(LadderCanvas canvas, LadderRow row, double top)
    {
        OxyColor color = LadderColors.Of(row.Kind);
        double left = scale.X(row.Low);
        double width = Math.Max(2, scale.X(row.High) - left);
        if (row.Kind == LadderRowKind.Overlap)
        {
            canvas.Hatch(left, top, width, BarHeight, color);
            canvas.Box(left, top, width, BarHeight, OxyColors.Undefined, color, 1.5);
            return;
        }

        canvas.Line(left, top, left, top + BarHeight, color, 2.5);
        canvas.Line(left + width, top, left + width, top + BarHeight, color, 2.5);
        canvas.Line(left, top + (BarHeight / 2), left + width, top + (BarHeight / 2), color, 2.5);
    }

    private void DrawBar(LadderCanvas canvas, LadderRow row, double top)
    {
        OxyColor color = LadderColors.Of(row.Kind);
        double middle = top + (BarHeight / 2);
        bool isOpen = double.IsPositiveInfinity(row.High);
        bool isBeyond = !isOpen && scale.IsBeyond(row.High);
        double right = isOpen || isBeyond ? BarsRight : scale.X(row.High);
        double solidTo = !isOpen ? right
            : double.IsPositiveInfinity(row.Expected) ? scale.X(row.Low)
            : scale.X(row.Expected);
        double left = Math.Min(scale.X(row.Low), right - ThinBar);
        canvas.Box(left, top, Math.Max(ThinBar, solidTo - left), BarHeight, color, LadderColors.Ink, 0.8);
        if (isOpen)
        {
            canvas.DashedBox(solidTo, top, right - 14 - solidTo, BarHeight, color);
        }

        if (isOpen || isBeyond)
        {
            canvas.ArrowHead(right + 12, middle, 13, color);
            double free = isOpen ? right - 14 - solidTo : left - BarsLeft;
            string note = phrase.Of(isOpen ? "ladder.key.open" : "ladder.beyond");
            if (free > SvgTextMeasurer.Width(note, 12) + 16)
            {
                canvas.Text(isOpen ? right - 22 : left - 8, middle, note, 12, LadderColors.Ink, false, HorizontalAlignment.Right);
            }
        }

        if (!double.IsPositiveInfinity(row.Expected) && !scale.IsBeyond(row.Expected) && row.High > row.Low)
        {
            canvas.Box(scale.X(row.Expected) - 2.5, top - 4, 5, BarHeight + 8, LadderColors.Paper, LadderColors.Ink, 1.2);
        }
    }

    private void DrawKey(LadderCanvas canvas, double y)
    {
        double x = Margin;
        (LadderRowKind Kind, string Code)[] kinds =
        [
            (LadderRowKind.Work, "ladder.key.work"), (LadderRowKind.Engagement, "ladder.key.engagement"),
            (LadderRowKind.Device, "ladder.key.device"), (LadderRowKind.Part, "ladder.key.part"),
        ];
        foreach ((LadderRowKind kind, string code) in kinds)
        {
            canvas.Box(x, y - 7, 26, 14, LadderColors.Of(kind), LadderColors.Ink, 0.8);
            x = Label(canvas, x + 32, y, code);
        }

        canvas.Box(x + 4, y - 10, 5, 20, LadderColors.Paper, LadderColors.Ink, 1.2);
        x = Label(canvas, x + 16, y, "ladder.key.expected");
        canvas.ArrowHead(x + 14, y, 8, LadderColors.Faint);
        x = Label(canvas, x + 20, y, "ladder.key.open");
        canvas.DashedBox(x, y - 7, 26, 14, LadderColors.Faint);
        Label(canvas, x + 32, y, "ladder.key.notKnown");
    }

    private double Label(LadderCanvas canvas, double x, double y, string code)
    {
        string label = phrase.Of(code);
        canvas.Text(x, y, label, 13, LadderColors.Ink, false, HorizontalAlignment.Left);
        return x + SvgTextMeasurer.Width(label, 13) + 12;
    }
}
