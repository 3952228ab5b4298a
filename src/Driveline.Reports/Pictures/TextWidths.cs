namespace Driveline.Reports.Pictures;

/// <summary>
/// Measures text by the advance widths of Helvetica, in thousandths of the size, with room for a somewhat wider font of the reader's.
/// </summary>
/// <remarks>Widths of U+0020 to U+007E from the published font metrics of Helvetica and Helvetica-Bold; the rest is estimated.</remarks>
internal static class TextWidths
{
    // A font of the caller's may be wider than ours.
    private const double Slack = 1.08 / 1000;
    private const int Letter = 600;
    private const int Ideograph = 1000;

    private static readonly short[] Regular =
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556,
        278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667,
        611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833,
        556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
    ];

    private static readonly short[] Bold =
    [
        278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556,
        333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778, 722, 667,
        611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889,
        611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
    ];

    /// <summary>Width of a text in the units of its size.</summary>
    public static double Of(string text, double size, bool isBold) => Of(text, 0, text.Length, size, isBold);

    /// <summary>The text in lines no wider than a column; a word wider than the column is cut.</summary>
    public static IReadOnlyList<string> Lines(string text, double width, double size, bool isBold)
    {
        if (Of(text, size, isBold) <= width)
        {
            return [text];
        }

        var lines = new List<string>();
        int start = 0;
        while (start < text.Length)
        {
            int end = Fitting(text, start, width, size, isBold);
            int cut = end == text.Length ? end : text.LastIndexOf(' ', end, end - start);
            cut = cut <= start ? end : cut;
            lines.Add(text.Substring(start, cut - start));
            start = cut;
            while (start < text.Length && text[start] == ' ')
            {
                start++;
            }
        }

        return lines.Count == 0 ? [string.Empty] : lines;
    }

    private static int Fitting(string text, int start, double width, double size, bool isBold)
    {
        double room = width / (size * Slack);
        int end = start;
        while (end < text.Length && (room -= Of(text[end], isBold)) >= 0)
        {
            end++;
        }

        if (end < text.Length && end > start + 1 && char.IsLowSurrogate(text[end]))
        {
            end--;
        }

        return Math.Max(end, start + (char.IsHighSurrogate(text[start]) && start + 1 < text.Length ? 2 : 1));
    }

    private static double Of(string text, int from, int to, double size, bool isBold)
    {
        int sum = 0;
        for (int k = from; k < to; k++)
        {
            sum += Of(text[k], isBold);
        }

        return sum * size * Slack;
    }

    private static int Of(char c, bool isBold) => c is >= ' ' and <= '~' ? (isBold ? Bold : Regular)[c - ' ']
        : c is '·' or '\u00A0' or '\u202F' ? 278
        : c < '\u1100' || char.IsSurrogate(c) || c is >= '\u2000' and < '\u2E80' ? Letter
        : Ideograph;
}
