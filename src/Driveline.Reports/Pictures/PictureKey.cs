namespace Driveline.Reports.Pictures;

/// <summary>The key of a picture: marks with their words, in as many lines as the width asks for.</summary>
internal sealed class PictureKey(PictureFrame frame)
{
    private const double LineHeight = 22;
    private const double Gap = 14;

    private readonly List<(double MarkWidth, Action<SvgCanvas, double, double> Mark, string Words)> entries = [];

    /// <summary>Height of all its lines.</summary>
    public double Height => LineHeight * Lines().Count();

    /// <summary>Adds a mark, drawn from its left at its middle, with its words.</summary>
    public PictureKey Add(double markWidth, string words, Action<SvgCanvas, double, double> mark)
    {
        entries.Add((markWidth, mark, words));
        return this;
    }

    public void Draw(SvgCanvas canvas, double top)
    {
        double y = top + (LineHeight / 2);
        foreach (IReadOnlyList<int> line in Lines())
        {
            double x = frame.Margin;
            foreach (int k in line)
            {
                (double markWidth, Action<SvgCanvas, double, double> mark, string words) = entries[k];
                mark(canvas, x, y);
                canvas.Text(x + markWidth + 6, y, words, frame.Small, SvgInk.Ink);
                x += WidthOf(k);
            }

            y += LineHeight;
        }
    }

    private IEnumerable<IReadOnlyList<int>> Lines()
    {
        var line = new List<int>();
        double used = 0;
        for (int k = 0; k < entries.Count; k++)
        {
            if (line.Count > 0 && used + WidthOf(k) - Gap > frame.Inner)
            {
                yield return line;
                line = [];
                used = 0;
            }

            line.Add(k);
            used += WidthOf(k);
        }

        if (line.Count > 0)
        {
            yield return line;
        }
    }

    private double WidthOf(int k) => entries[k].MarkWidth + 6 + TextWidths.Of(entries[k].Words, frame.Small, false) + Gap;
}
