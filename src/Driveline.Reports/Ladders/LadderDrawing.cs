using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Ladders;

/// <summary>Lays the picture out: title, one row a torque with its words and its bar, axis, key.</summary>
internal sealed class LadderDrawing : IPicture
{
    private const double AxisHeight = 60;

    private readonly Phrase phrase;
    private readonly PictureFrame frame;
    private readonly string? title;
    private readonly LeadTone tone;
    private readonly IReadOnlyList<string> headline;
    private readonly string[] answers;
    private readonly double size;
    private readonly IReadOnlyList<LadderRow> rows;
    private readonly IReadOnlyList<LadderRow> gaps;
    private readonly LadderLayout layout;
    private readonly LadderScale scale;
    private readonly LadderBars bars;
    private readonly PictureKey key;

    private LadderDrawing(
        Phrase phrase, PictureFrame frame, string? title, string headline, double size, LeadTone tone, string[] answers,
        IReadOnlyList<LadderRow> rows, IReadOnlyList<LadderRow> gaps)
    {
        this.phrase = phrase;
        this.frame = frame;
        this.title = title;
        Title = headline;
        this.size = size;
        this.headline = size > 0 ? TextWidths.Lines(headline, frame.Inner, size, true) : [];
        this.tone = tone;
        this.answers = [.. answers.SelectMany(a => TextWidths.Lines(a, frame.Inner, frame.Name, false))];
        this.rows = rows;
        this.gaps = gaps;
        layout = new LadderLayout(frame, [.. rows, .. gaps]);
        scale = new LadderScale(rows, layout.BarsLeft, layout.BarsRight);
        bars = new LadderBars(phrase, layout, scale);
        key = KeyOf();
    }

    /// <summary>The ladder of a verdict; without its headline where a page has said it.</summary>
    public static LadderDrawing Of(ProtectionVerdict verdict, ReportOptions options, PictureFrame frame)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        return new LadderDrawing(
            phrase, frame, options.Title is null ? null : CleanText.Title(options.Title), AnswerSentences.Headline(verdict, phrase),
            frame.HasHeadline ? frame.Headline : 0, LeadTones.Of(verdict), frame.HasHeadline ? AnswersOf(verdict, phrase, frame) : [],
            LadderRows.Of(verdict, phrase), LadderGaps.Of(verdict, phrase))
        {
            Description = phrase.Of("ladder.description"),
        };
    }

    /// <summary>Any rows under a sentence.</summary>
    public static LadderDrawing Of(
        string headline, string description, LeadTone tone, IReadOnlyList<LadderRow> rows, ReportOptions options,
        PictureFrame frame) => new(
        new Phrase(options.Texts, options.Units), frame, null, headline, frame.Name, tone, [], rows, [])
        {
            Description = description,
        };

    /// <summary>What the picture says, for those who cannot see it.</summary>
    public string Title { get; }

    /// <inheritdoc/>
    public string Description { get; private set; } = string.Empty;

    public double Width => frame.Width;

    public double Height => Math.Ceiling(RowsTop + layout.Height + AxisHeight + key.Height + 16);

    private double HeadlineHeight => headline.Count * SvgCanvas.LineHeight(size);

    private double RowsTop => (headline.Count == 0 ? 8 : frame.Margin) + (title is null ? 0 : 24) + HeadlineHeight
        + (answers.Length * SvgCanvas.LineHeight(frame.Name)) + (frame.HasHeadline ? 26 : headline.Count > 0 ? 12 : 0);

    public void Draw(SvgCanvas canvas)
    {
        double y = frame.Margin;
        if (title is not null)
        {
            canvas.Text(frame.Margin, y + 8, TextWidths.Lines(title, frame.Inner, frame.Name, false)[0], frame.Name, SvgInk.Faint);
            y += 24;
        }

        if (headline.Count > 0)
        {
            canvas.Box(frame.Margin / 3, y, frame.Margin / 3, HeadlineHeight, SvgPalette.Of(tone), SvgInk.None, 0);
            y += canvas.Column(frame.Margin, y, headline, size, SvgInk.Ink, true);
            canvas.Column(frame.Margin, y + 6, answers, frame.Name, SvgInk.Ink, false);
        }

        double top = RowsTop;
        double bottom = top + layout.Height;
        DrawColumns(canvas, top, bottom);
        DrawAxis(canvas, top, bottom);
        foreach (LadderPlace place in layout.Places)
        {
            if (gaps.Count > 0 && ReferenceEquals(place.Row, gaps[0]))
            {
                canvas.Line(frame.Margin, top + place.Top, frame.Width - frame.Margin, top + place.Top, SvgInk.Faint, 1);
            }

            bars.Draw(canvas, place, top + place.Top);
        }

        key.Draw(canvas, bottom + AxisHeight);
    }

    private static string[] AnswersOf(ProtectionVerdict verdict, Phrase phrase, PictureFrame frame)
    {
        string guards = phrase.Of("report.guards") + " " + phrase.Of("answer." + verdict.Guards) + ".";
        string quiet = phrase.Of("report.quiet") + " " + phrase.Of("answer." + verdict.Quiet) + ".";
        string both = guards + " \u00A0 " + quiet;
        return TextWidths.Of(both, frame.Name, false) <= frame.Inner ? [both] : [guards, quiet];
    }

    private void DrawColumns(SvgCanvas canvas, double top, double bottom)
    {
        foreach (LadderRow gap in gaps)
        {
            if (gap.IsKnown && scale.HasTorque)
            {
                canvas.Box(scale.X(gap.Low), top, scale.X(gap.High) - scale.X(gap.Low), bottom - top,
                    gap.Kind == LadderRowKind.Room ? SvgInk.RoomGround : SvgInk.OverlapGround, SvgInk.None, 0);
            }
        }
    }

    private void DrawAxis(SvgCanvas canvas, double top, double bottom)
    {
        double middle = (layout.BarsLeft + layout.BarsRight) / 2;
        if (!scale.HasTorque)
        {
            canvas.Text(middle, bottom + 24, phrase.Of("ladder.noTorque"), frame.Detail, SvgInk.Faint, false, TextAlign.Middle);
            return;
        }

        foreach (double tick in scale.Ticks)
        {
            canvas.Line(scale.X(tick), top, scale.X(tick), bottom, SvgInk.Grid, 1);
            canvas.Text(scale.X(tick), bottom + 16, phrase.Number(tick, "0.####"), frame.Small, SvgInk.Ink, false, TextAlign.Middle);
        }

        canvas.Line(layout.BarsLeft, bottom, layout.BarsRight, bottom, SvgInk.Ink, 1.5);
        string axis = phrase.Of(Phrase.Code("ladder.axis").With("unit", phrase.TorqueUnit));
        canvas.Text(middle, bottom + 40, axis, frame.Detail, SvgInk.Ink, false, TextAlign.Middle);
    }

    private PictureKey KeyOf()
    {
        var entries = new PictureKey(frame);
        (LadderRowKind Kind, string Code)[] kinds =
        [
            (LadderRowKind.Work, "ladder.key.work"), (LadderRowKind.Engagement, "ladder.key.engagement"),
            (LadderRowKind.Device, "ladder.key.device"), (LadderRowKind.Part, "ladder.key.part"),
        ];
        foreach ((LadderRowKind kind, string code) in kinds.Where(k => rows.Any(r => r.Kind == k.Kind)))
        {
            entries.Add(26, phrase.Of(code), (c, x, y) => c.Box(x, y - 7, 26, 14, LadderInks.Of(kind), SvgInk.Ink, 0.8));
        }

        if (rows.Any(r => r.IsKnown))
        {
            entries.Add(6, phrase.Of("ladder.key.expected"), (c, x, y) => c.Box(x, y - 9, 5, 18, SvgInk.Paper, SvgInk.Ink, 1.2));
        }

        if (rows.Any(r => double.IsPositiveInfinity(r.High)))
        {
            entries.Add(14, phrase.Of("ladder.key.open"), (c, x, y) => c.ArrowHead(x + 13, y, 8, SvgInk.Faint));
        }

        return rows.All(r => r.IsKnown && !double.IsPositiveInfinity(r.High)) ? entries
            : entries.Add(26, phrase.Of("ladder.key.notKnown"), (c, x, y) => c.DashedBox(x, y - 7, 26, 14, SvgInk.Faint));
    }
}
