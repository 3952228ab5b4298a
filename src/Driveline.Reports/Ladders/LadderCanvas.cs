using Driveline.Reports.Documents;
using OxyPlot;

namespace Driveline.Reports.Ladders;

/// <summary>Draws lines, boxes, arrows and text of the picture.</summary>
internal sealed class LadderCanvas
{
    private const string Font = "Arial, Helvetica, Liberation Sans, sans-serif";

    private static readonly double[] Dashes = [6, 4];

    private readonly SvgRenderContext context;

    public LadderCanvas(SvgRenderContext context) => this.context = context;

    public void Text(double x, double y, string text, double size, OxyColor color, bool isBold, HorizontalAlignment align) =>
        context.DrawText(
        new ScreenPoint(x, y), text, color, Font, size, isBold ? 700 : 400, 0, align, VerticalAlignment.Middle, null);

    /// <summary>Text in lines of a column, from the top; returns the height used.</summary>
    public double Column(double x, double top, double width, string text, double size, OxyColor color, bool isBold)
    {
        double y = top;
        foreach (string line in WrappedText.Lines(text, SvgTextMeasurer.Fits(width, size, isBold)))
        {
            Text(x, y + (size * 0.62), line, size, color, isBold, HorizontalAlignment.Left);
            y += LineHeight(size);
        }

        return y - top;
    }

    public static double LineHeight(double size) => size * 1.3;

    public static double ColumnHeight(double width, string text, double size, bool isBold) =>
        WrappedText.Lines(text, SvgTextMeasurer.Fits(width, size, isBold)).Count * LineHeight(size);

    public void Line(double x1, double y1, double x2, double y2, OxyColor color, double thickness) => context.DrawLine(
        [new ScreenPoint(x1, y1), new ScreenPoint(x2, y2)], color, thickness, EdgeRenderingMode.Adaptive, null, LineJoin.Miter);

    /// <summary>A line through many points.</summary>
    public void Path(IList<ScreenPoint> points, OxyColor color, double thickness, bool isDashed) =>
        context.DrawLine(points, color, thickness, EdgeRenderingMode.Adaptive, isDashed ? Dashes : null, LineJoin.Round);

    public void Box(double left, double top, double width, double height, OxyColor fill, OxyColor stroke, double thickness) =>
        context.DrawRectangle(new OxyRect(left, top, width, height), fill, stroke, thickness, EdgeRenderingMode.Adaptive);

    public void DashedBox(double left, double top, double width, double height, OxyColor stroke) => context.DrawPolygon(
        [new(left, top), new(left + width, top), new(left + width, top + height), new(left, top + height)],
        OxyColors.Transparent, stroke, 1.5, EdgeRenderingMode.Adaptive, Dashes, LineJoin.Miter);

    /// <summary>Diagonal lines across a box.</summary>
    public void Hatch(double left, double top, double width, double height, OxyColor color)
    {
        for (double start = left - height; start < left + width; start += 7)
        {
            double x1 = Math.Max(start, left);
            double x2 = Math.Min(start + height, left + width);
            if (x2 > x1)
            {
                Line(x1, top + height - (x1 - start), x2, top + height - (x2 - start), color, 1.2);
            }
        }
    }

    /// <summary>An open arrow head that points to the right.</summary>
    public void ArrowHead(double tip, double middle, double size, OxyColor color) => context.DrawPolygon(
        [new(tip - size, middle - size), new(tip, middle), new(tip - size, middle + size)],
        LadderColors.Paper, color, 2, EdgeRenderingMode.Adaptive, null, LineJoin.Miter);
}
