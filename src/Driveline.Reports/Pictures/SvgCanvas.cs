using System.Text;

namespace Driveline.Reports.Pictures;

/// <summary>Draws shapes and text as SVG, each with a class for its colour and none of its own.</summary>
internal sealed class SvgCanvas
{
    private readonly StringBuilder svg = new(8192);

    /// <summary>Inks that fill something, a bit each.</summary>
    public uint Fills { get; private set; }

    /// <summary>Inks that draw a line, a bit each.</summary>
    public uint Strokes { get; private set; }

    public StringBuilder Shapes => svg;

    public static double LineHeight(double size) => size * 1.3;

    /// <summary>A line of text whose middle stands at y.</summary>
    public void Text(double x, double y, string text, double size, SvgInk ink, bool isBold, TextAlign align)
    {
        svg.Append("<text x=\"").Number(x).Append("\" y=\"").Number(y + (size * 0.35)).Append("\" font-size=\"").Number(size).Append('"');
        if (isBold)
        {
            svg.Append(" font-weight=\"700\"");
        }

        svg.Append(align switch
        {
            TextAlign.Middle => " text-anchor=\"middle\"",
            TextAlign.End => " text-anchor=\"end\"",
            _ => string.Empty,
        });
        Class(ink, SvgInk.None);
        svg.Append('>').Escaped(text).Append("</text>\n");
    }

    /// <summary>A line of text that begins at x.</summary>
    public void Text(double x, double y, string text, double size, SvgInk ink) => Text(x, y, text, size, ink, false, TextAlign.Start);

    /// <summary>Lines of text one below the other, from the top; returns the height used.</summary>
    public double Column(double x, double top, IReadOnlyList<string> lines, double size, SvgInk ink, bool isBold)
    {
        double y = top;
        foreach (string line in lines)
        {
            Text(x, y + (size * 0.62), line, size, ink, isBold, TextAlign.Start);
            y += LineHeight(size);
        }

        return y - top;
    }

    public void Line(double x1, double y1, double x2, double y2, SvgInk ink, double thickness)
    {
        svg.Append("<line x1=\"").Number(x1).Append("\" y1=\"").Number(y1).Append("\" x2=\"").Number(x2).Append("\" y2=\"").Number(y2)
            .Append('"');
        Class(SvgInk.None, ink);
        Width(thickness, false);
        svg.Append("/>\n");
    }

    /// <summary>A box; an ink of none leaves out its ground or its outline.</summary>
    public void Box(double left, double top, double width, double height, SvgInk fill, SvgInk stroke, double thickness) =>
        Box(left, top, width, height, fill, stroke, thickness, false);

    /// <summary>A dashed outline: something that is not known.</summary>
    public void DashedBox(double left, double top, double width, double height, SvgInk stroke) =>
        Box(left, top, width, height, SvgInk.None, stroke, 1.5, true);

    /// <summary>A line through points, taken as they come: x, y.</summary>
    public void Path(IReadOnlyList<(double X, double Y)> points, SvgInk ink, double thickness, bool isDashed) =>
        Points("polyline", points, SvgInk.None, ink, thickness, isDashed, null);

    /// <summary>The same in dashes of its own, which tell lines apart where their colours do not.</summary>
    public void Path(IReadOnlyList<(double X, double Y)> points, SvgInk ink, double thickness, LineDash dash)
    {
        Points("polyline", points, SvgInk.None, ink, thickness, false, dash switch
        {
            LineDash.Dashed => "6 4",
            LineDash.Dotted => "2 4",
            LineDash.DashDotted => "12 4 2 4",
            _ => null,
        });
    }

    public void Polygon(IReadOnlyList<(double X, double Y)> points, SvgInk fill, SvgInk stroke, double thickness) =>
        Points("polygon", points, fill, stroke, thickness, false, null);

    public void Circle(double x, double y, double radius, SvgInk fill, SvgInk stroke, double thickness)
    {
        svg.Append("<circle cx=\"").Number(x).Append("\" cy=\"").Number(y).Append("\" r=\"").Number(radius).Append('"');
        Class(fill, stroke);
        Width(thickness, false);
        svg.Append("/>\n");
    }

    /// <summary>Diagonal lines across a box.</summary>
    public void Hatch(double left, double top, double width, double height, SvgInk ink)
    {
        svg.Append("<path d=\"");
        for (double start = left - height; start < left + width; start += 7)
        {
            double x1 = Math.Max(start, left);
            double x2 = Math.Min(start + height, left + width);
            if (x2 > x1)
            {
                svg.Append('M').Number(x1).Append(' ').Number(top + height - (x1 - start)).Append('L').Number(x2).Append(' ')
                    .Number(top + height - (x2 - start));
            }
        }

        svg.Append('"');
        Class(SvgInk.None, ink);
        Width(1.2, false);
        svg.Append("/>\n");
    }

    /// <summary>An open arrow head that points to the right.</summary>
    public void ArrowHead(double tip, double middle, double size, SvgInk ink) => Polygon(
        [(tip - size, middle - size), (tip, middle), (tip - size, middle + size)], SvgInk.Paper, ink, 2);

    private void Box(double left, double top, double width, double height, SvgInk fill, SvgInk stroke, double thickness, bool isDashed)
    {
        svg.Append("<rect x=\"").Number(left).Append("\" y=\"").Number(top).Append("\" width=\"").Number(width).Append("\" height=\"")
            .Number(height).Append('"');
        Class(fill, stroke);
        Width(stroke == SvgInk.None ? 0 : thickness, isDashed);
        svg.Append("/>\n");
    }

    private void Points(
        string shape, IReadOnlyList<(double X, double Y)> points, SvgInk fill, SvgInk stroke, double thickness, bool isDashed,
        string? dashes)
    {
        svg.Append('<').Append(shape).Append(" points=\"");
        for (int k = 0; k < points.Count; k++)
        {
            if (k > 0)
            {
                svg.Append(' ');
            }

            svg.Number(points[k].X).Append(',').Number(points[k].Y);
        }

        svg.Append('"');
        Class(fill, stroke);
        Width(thickness, isDashed);
        if (dashes is not null)
        {
            svg.Append(" stroke-dasharray=\"").Append(dashes).Append('"');
        }

        svg.Append(" stroke-linejoin=\"round\"/>\n");
    }

    private void Class(SvgInk fill, SvgInk stroke)
    {
        Fills |= 1u << (int)fill;
        Strokes |= 1u << (int)stroke;
        if (fill == SvgInk.None)
        {
            svg.Append(" fill=\"none\"");
        }

        svg.Append(" class=\"");
        if (fill != SvgInk.None)
        {
            svg.Append("dl-f-").Append(SvgPalette.Name(fill)).Append(stroke == SvgInk.None ? string.Empty : " ");
        }

        if (stroke != SvgInk.None)
        {
            svg.Append("dl-s-").Append(SvgPalette.Name(stroke));
        }

        svg.Append('"');
    }

    private void Width(double thickness, bool isDashed)
    {
        if (thickness > 0)
        {
            svg.Append(" stroke-width=\"").Number(thickness).Append(isDashed ? "\" stroke-dasharray=\"6 4\"" : "\"");
        }
    }
}
