using System.Text;

namespace Driveline.Reports.Pictures;

/// <summary>Turns a drawing into an SVG element that says what it shows, to stand alone or in a page.</summary>
/// <remarks>Its <c>viewBox</c> is its size, so that a narrower page shrinks the whole picture and cuts nothing off.</remarks>
internal static class SvgDocument
{
    private const string Font = "Arial, Helvetica, Liberation Sans, sans-serif";

    /// <summary>A picture with a font of its own, that follows the reader's dark screen.</summary>
    public static string Whole(double width, double height, string title, string description, Action<SvgCanvas> draw) =>
        Element(width, height, title, description, draw, " font-family=\"" + Font + "\"", "svg.dl-pic:root{color-scheme:light dark}");

    /// <summary>A picture in the font and the colour scheme of the page around it.</summary>
    public static string Fragment(double width, double height, string title, string description, Action<SvgCanvas> draw) =>
        Element(width, height, title, description, draw, string.Empty, string.Empty);

    /// <summary>A picture with a font of its own, that follows the reader's dark screen.</summary>
    public static string Whole(IPicture picture) =>
        Whole(picture.Width, picture.Height, picture.Title, picture.Description, picture.Draw);

    /// <summary>A picture in the font and the colour scheme of the page around it.</summary>
    public static string Fragment(IPicture picture) =>
        Fragment(picture.Width, picture.Height, picture.Title, picture.Description, picture.Draw);

    private static string Element(
        double width, double height, string title, string description, Action<SvgCanvas> draw, string font, string style)
    {
        var canvas = new SvgCanvas();
        canvas.Box(0, 0, width, height, SvgInk.Paper, SvgInk.None, 0);
        draw(canvas);
        var svg = new StringBuilder(canvas.Shapes.Length + 3000);
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"dl-pic\" width=\"").Number(width);
        svg.Append("\" height=\"").Number(height).Append("\" viewBox=\"0 0 ").Number(width).Append(' ').Number(height);
        svg.Append("\" role=\"img\"").Append(font).Append("><title>").Escaped(title).Append("</title><desc>").Escaped(description);
        svg.Append("</desc><style>").Append(style);
        SvgPalette.Append(svg, canvas.Fills, canvas.Strokes);
        svg.Append("</style>\n");
#if NET
        svg.Append(canvas.Shapes);
#else
        svg.Append(canvas.Shapes.ToString());
#endif
        return svg.Append("</svg>\n").ToString();
    }
}
