using System.Globalization;
using System.Xml.Linq;

namespace Driveline.Tests.Reports;

/// <summary>
/// The shapes of a picture as they are drawn, found by colour and size alone, and the axes that its printed numbers make.
/// </summary>
internal sealed class DrawnSvg
{
    private readonly XElement[] shapes;

    public DrawnSvg(string svg) => shapes = [.. XDocument.Parse(svg).Descendants()];

    public IEnumerable<DrawnText> Texts => shapes.Where(e => e.Name.LocalName == "text").Select(DrawnText.Of);

    public IEnumerable<(double Left, double Top, double Width, double Height)> Boxes(string fill) => shapes
        .Where(e => e.Name.LocalName == "rect" && e.Attribute("style")!.Value.StartsWith("fill:" + fill + ";", StringComparison.Ordinal))
        .Select(e => (Value(e, "x"), Value(e, "y"), Value(e, "width"), Value(e, "height")));

    /// <summary>Lines of a colour with more points than any frame or key has.</summary>
    public IEnumerable<(double X, double Y)[]> Curves(string stroke) => shapes
        .Where(e => e.Name.LocalName == "polyline"
            && e.Attribute("style")!.Value.Contains("stroke:" + stroke + ";", StringComparison.Ordinal))
        .Select(e => Points(e.Attribute("points")!.Value))
        .Where(points => points.Length > 50);

    /// <summary>The straight line through the printed numbers of an axis: from a pixel back to a value.</summary>
    public static Func<double, double> Axis(IEnumerable<(double Pixel, double Value)> ticks)
    {
        (double Pixel, double Value)[] sorted = [.. ticks.OrderBy(t => t.Value)];
        Assert.True(sorted.Length >= 2, "an axis needs two numbers");
        double perPixel = (sorted[^1].Value - sorted[0].Value) / (sorted[^1].Pixel - sorted[0].Pixel);
        Assert.All(sorted,
            t => Assert.Equal(t.Value, sorted[0].Value + ((t.Pixel - sorted[0].Pixel) * perPixel), Math.Abs(perPixel) * 0.01));
        return pixel => sorted[0].Value + ((pixel - sorted[0].Pixel) * perPixel);
    }

    private static double Value(XElement shape, string name) => double.Parse(shape.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static (double X, double Y)[] Points(string text) =>
    [
        .. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(','))
            .Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture))),
    ];
}
