using System.Globalization;
using System.Xml.Linq;

namespace Driveline.Tests.Reports;

/// <summary>
/// The shapes of a picture as they are drawn, found by ink and size alone, and the axes that its printed numbers make.
/// </summary>
internal sealed class DrawnSvg
{
    private readonly XElement[] shapes;

    public DrawnSvg(string svg) => shapes = [.. XDocument.Parse(svg).Descendants()];

    public IEnumerable<DrawnText> Texts => shapes.Where(e => e.Name.LocalName == "text").Select(DrawnText.Of);

    public IEnumerable<(double Left, double Top, double Width, double Height)> Boxes(string ink) => shapes
        .Where(e => e.Name.LocalName == "rect" && HasClass(e, "dl-f-" + ink))
        .Select(e => (Value(e, "x"), Value(e, "y"), Value(e, "width"), Value(e, "height")));

    /// <summary>Lines of an ink that are wider than any mark of a key.</summary>
    public IEnumerable<(double X, double Y)[]> Curves(string ink) => shapes
        .Where(e => e.Name.LocalName == "polyline" && HasClass(e, "dl-s-" + ink))
        .Select(e => Points(e.Attribute("points")!.Value))
        .Where(points => Math.Abs(points[^1].X - points[0].X) > 100);

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

    private static bool HasClass(XElement shape, string name) =>
        (shape.Attribute("class")?.Value ?? string.Empty).Split(' ').Contains(name, StringComparer.Ordinal);

    private static double Value(XElement shape, string name) => double.Parse(shape.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static (double X, double Y)[] Points(string text) =>
    [
        .. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(','))
            .Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture))),
    ];
}
