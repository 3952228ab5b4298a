using System.Globalization;
using System.Text;
using Driveline.Reports.Documents;
using OxyPlot;

namespace Driveline.Reports.Ladders;

/// <summary>Turns a drawing into an SVG element that says what it shows.</summary>
/// <remarks>Its <c>viewBox</c> is its size, so that a narrower page shrinks the whole picture and cuts nothing off.</remarks>
internal static class SvgDocument
{
    public static string Element(double width, double height, string description, Action<LadderCanvas> draw)
    {
        using var stream = new MemoryStream();
        using (var context = new SvgRenderContext(stream, width, height, false, new SvgTextMeasurer(), LadderColors.Paper))
        {
            draw(new LadderCanvas(context));
            context.Complete();
            context.Flush();
        }

        string svg = Encoding.UTF8.GetString(stream.ToArray()).Replace("\r\n", "\n").Trim();
        svg = svg.Substring(svg.IndexOf("<svg", StringComparison.Ordinal));
        int end = svg.IndexOf('>');
        return svg.Substring(0, end) + " viewBox=\"0 0 " + Size(width) + " " + Size(height) + "\" role=\"img\"><title>"
            + HtmlRendering.Escape(description) + "</title>" + svg.Substring(end + 1);
    }

    public static string Whole(string element) => "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + element + "\n";

    private static string Size(double pixels) => pixels.ToString("0.##", CultureInfo.InvariantCulture);
}
