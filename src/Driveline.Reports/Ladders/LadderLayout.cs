using Driveline.Reports.Pictures;

namespace Driveline.Reports.Ladders;

/// <summary>Where the words and the bar of each row stand: beside each other, or one above the other on a phone.</summary>
internal sealed class LadderLayout
{
    private const double RowGap = 16;

    public LadderLayout(PictureFrame frame, IReadOnlyList<LadderRow> rows)
    {
        Frame = frame;
        WordsWidth = frame.IsNarrow ? frame.Inner : frame.Width * 0.366;
        BarsLeft = frame.IsNarrow ? frame.Margin : frame.Width * 0.412;
        BarsRight = frame.Width - (frame.IsNarrow ? frame.Margin + 14 : 40);
        BarHeight = frame.IsNarrow ? 18 : 24;
        var placed = new LadderPlace[rows.Count];
        double top = 0;
        for (int k = 0; k < rows.Count; k++)
        {
            placed[k] = Place(rows[k], top);
            top += placed[k].Height;
        }

        Places = placed;
        Height = top;
    }

    public PictureFrame Frame { get; }

    public double WordsWidth { get; }

    public double BarsLeft { get; }

    public double BarsRight { get; }

    public double BarHeight { get; }

    /// <summary>The rows in order, from 0 down.</summary>
    public IReadOnlyList<LadderPlace> Places { get; }

    /// <summary>Height of all rows.</summary>
    public double Height { get; }

    private LadderPlace Place(LadderRow row, double top)
    {
        IReadOnlyList<string> name = TextWidths.Lines(row.Name, WordsWidth, Frame.Name, true);
        IReadOnlyList<string> detail = TextWidths.Lines(row.Detail, WordsWidth, Frame.Detail, false);
        double words = (name.Count * SvgCanvas.LineHeight(Frame.Name)) + (detail.Count * SvgCanvas.LineHeight(Frame.Detail));
        if (Frame.IsNarrow)
        {
            return new LadderPlace(row, name, detail, top, words + 8 + BarHeight + RowGap, (RowGap / 2) + words + 6);
        }

        double height = RowGap + Math.Max(BarHeight + 8, words);
        return new LadderPlace(row, name, detail, top, height, (height - BarHeight) / 2);
    }
}
