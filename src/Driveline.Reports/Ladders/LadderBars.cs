using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Ladders;

/// <summary>Draws the words and the bar of a row.</summary>
internal sealed class LadderBars(Phrase phrase, LadderLayout layout, LadderScale scale)
{
    // A torque of one value still needs to be seen.
    private const double ThinBar = 5;

    public void Draw(SvgCanvas canvas, LadderPlace place, double top)
    {
        LadderRow row = place.Row;
        double y = top + 8;
        SvgInk words = row.Kind is LadderRowKind.Overlap or LadderRowKind.NoRoom ? SvgInk.Overlap : SvgInk.Ink;
        y += canvas.Column(layout.Frame.Margin, y, place.Name, layout.Frame.Name, words, true);
        canvas.Column(layout.Frame.Margin, y, place.Detail, layout.Frame.Detail, words, false);
        double barTop = top + place.Bar;
        if (!row.IsKnown)
        {
            double middle = (layout.BarsLeft + layout.BarsRight) / 2;
            SvgInk mark = row.Kind == LadderRowKind.Engagement ? SvgInk.Faint : LadderInks.Of(row.Kind);
            canvas.DashedBox(layout.BarsLeft, barTop, layout.BarsRight - layout.BarsLeft, layout.BarHeight, mark);
            canvas.Text(middle, barTop + (layout.BarHeight / 2), MarkOf(row), layout.Frame.Detail, mark, true, TextAlign.Middle);
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

    private void DrawBetween(SvgCanvas canvas, LadderRow row, double top)
    {
        SvgInk ink = LadderInks.Of(row.Kind);
        double left = scale.X(row.Low);
        double width = Math.Max(2, scale.X(row.High) - left);
        if (row.Kind == LadderRowKind.Overlap)
        {
            canvas.Hatch(left, top, width, layout.BarHeight, ink);
            canvas.Box(left, top, width, layout.BarHeight, SvgInk.None, ink, 1.5);
            return;
        }

        double middle = top + (layout.BarHeight / 2);
        canvas.Line(left, top, left, top + layout.BarHeight, ink, 2.5);
        canvas.Line(left + width, top, left + width, top + layout.BarHeight, ink, 2.5);
        canvas.Line(left, middle, left + width, middle, ink, 2.5);
    }

    private void DrawBar(SvgCanvas canvas, LadderRow row, double top)
    {
        SvgInk ink = LadderInks.Of(row.Kind);
        double middle = top + (layout.BarHeight / 2);
        bool isOpen = double.IsPositiveInfinity(row.High);
        bool isBeyond = !isOpen && scale.IsBeyond(row.High);
        double right = isOpen || isBeyond ? layout.BarsRight : scale.X(row.High);
        double solidTo = !isOpen ? right
            : double.IsPositiveInfinity(row.Expected) ? scale.X(row.Low)
            : scale.X(row.Expected);
        double left = Math.Min(scale.X(row.Low), right - ThinBar);
        canvas.Box(left, top, Math.Max(ThinBar, solidTo - left), layout.BarHeight, ink, SvgInk.Ink, 0.8);
        if (isOpen && right - 14 > solidTo)
        {
            canvas.DashedBox(solidTo, top, right - 14 - solidTo, layout.BarHeight, ink);
        }

        if (isOpen || isBeyond)
        {
            canvas.ArrowHead(right + 12, middle, 13, ink);
            double free = isOpen ? right - 14 - solidTo : left - layout.BarsLeft;
            string note = phrase.Of(isOpen ? "ladder.key.open" : "ladder.beyond");
            if (free > TextWidths.Of(note, layout.Frame.Small, false) + 16)
            {
                canvas.Text(isOpen ? right - 22 : left - 8, middle, note, layout.Frame.Small, SvgInk.Ink, false, TextAlign.End);
            }
        }

        if (!double.IsPositiveInfinity(row.Expected) && !scale.IsBeyond(row.Expected) && row.High > row.Low)
        {
            canvas.Box(scale.X(row.Expected) - 2.5, top - 4, 5, layout.BarHeight + 8, SvgInk.Paper, SvgInk.Ink, 1.2);
        }
    }
}
