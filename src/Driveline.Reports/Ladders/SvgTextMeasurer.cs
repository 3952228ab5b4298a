using OxyPlot;

namespace Driveline.Reports.Ladders;

/// <summary>Measures text by its length, a little on the wide side, so that nothing is clipped whatever font the reader has.</summary>
internal sealed class SvgTextMeasurer : ClippingRenderContext
{
    private const double WidthPerSize = 0.60;
    private const double BoldWidthPerSize = 0.66;

    // A wrapped line is an average of many characters, and the column has some slack to its right.
    private const double WidthInColumn = 0.54;
    private const double BoldWidthInColumn = 0.59;
    private const double HeightPerSize = 1.25;

    /// <summary>Characters of a size that fit into a width.</summary>
    public static int Fits(double width, double fontSize, bool isBold) =>
        Math.Max(1, (int)(width / (fontSize * (isBold ? BoldWidthInColumn : WidthInColumn))));

    /// <summary>Width of a text.</summary>
    public static double Width(string text, double fontSize) => text.Length * fontSize * WidthPerSize;

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        new((text ?? string.Empty).Length * fontSize * (fontWeight > 500 ? BoldWidthPerSize : WidthPerSize), fontSize * HeightPerSize);

    /// <inheritdoc/>
    public override void DrawLine(
        IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray,
            LineJoin lineJoin)
    {
    }

    /// <inheritdoc/>
    public override void DrawPolygon(
        IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode,
            double[] dashArray, LineJoin lineJoin)
    {
    }

    /// <inheritdoc/>
    public override void DrawText(
        ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotation,
        HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
    }

    /// <inheritdoc/>
    protected override void ResetClip()
    {
    }

    /// <inheritdoc/>
    protected override void SetClip(OxyRect clippingRectangle)
    {
    }
}
