using System.Text;
using Driveline.Reports.Documents;
using OxyPlot;

namespace Driveline.Reports.Ladders;

/// <summary>Turns a drawing into an SVG element that says what it shows.</summary>
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
        return svg.Substring(0, end) + " role=\"img\"><title>" + HtmlRendering.Escape(description) + "</title>" + svg.Substring(end + 1);
    }

    public static string Whole(string element) => "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + element + "\n";
}
