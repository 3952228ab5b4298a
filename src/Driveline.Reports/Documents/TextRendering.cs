using System.Globalization;
using System.Text;

namespace Driveline.Reports.Documents;

/// <summary>
/// Blocks as plain text for a terminal or a mail. Where a table is too wide its names are broken, or it is stacked: a row
/// under its name, a line a cell.
/// </summary>
internal static class TextRendering
{
    private const string Indent = "  ";
    private const int LeastName = 20;

    public static string Of(IEnumerable<ReportBlock> blocks, int width)
    {
        var text = new StringBuilder();
        foreach (ReportBlock block in blocks)
        {
            switch (block.Kind)
            {
                case ReportBlockKind.Title:
                    Underlined(text, block.Text, '=', width);
                    text.Append('\n');
                    break;
                case ReportBlockKind.Heading:
                    Underlined(text, block.Text, '-', width);
                    break;
                case ReportBlockKind.Lead:
                case ReportBlockKind.Paragraph:
                    Wrap(text, block.Text, string.Empty, string.Empty, width);
                    text.Append('\n');
                    break;
                case ReportBlockKind.Bullets:
                    foreach (string item in block.Items)
                    {
                        Wrap(text, item, "- ", Indent, width);
                    }

                    text.Append('\n');
                    break;
                case ReportBlockKind.Numbered or ReportBlockKind.Steps:
                    for (int k = 0; k < block.Items.Count; k++)
                    {
                        string number = (k + 1).ToString(CultureInfo.InvariantCulture) + ". ";
                        Wrap(text, block.Items[k], number, new string(' ', number.Length), width);
                    }

                    text.Append('\n');
                    break;
                case ReportBlockKind.Step:
                    Wrap(text, block.Text, string.Empty, "    ", width);
                    Wrap(text, block.Items[0], "    ", "    ", width);
                    break;
                case ReportBlockKind.Sign:
                    foreach (string item in block.Items)
                    {
                        Wrap(text, item, "____________________  ", "  ", width);
                    }

                    text.Append('\n');
                    break;
                case ReportBlockKind.Table:
                    Table(text, block.Rows, width);
                    text.Append('\n');
                    break;
            }
        }

        return text.ToString();
    }

    private static void Underlined(StringBuilder text, string content, char line, int width)
    {
        IReadOnlyList<string> lines = WrappedText.Lines(content, width);
        foreach (string one in lines)
        {
            text.Append(one).Append('\n');
        }

        text.Append(line, Longest(lines)).Append('\n');
    }

    private static void Wrap(StringBuilder text, string content, string first, string rest, int width)
    {
        string indent = first;
        foreach (string line in WrappedText.Lines(content, width - first.Length))
        {
            text.Append(indent).Append(line).Append('\n');
            indent = rest;
        }
    }

    private static void Table(StringBuilder text, IReadOnlyList<string[]> rows, int width)
    {
        int columns = rows.Count == 0 ? 0 : rows[0].Length;
        int[] widths = new int[columns];
        int left = width;
        for (int c = 0; c < columns; c++)
        {
            widths[c] = Longest(rows, c);
            left -= c > 0 ? widths[c] + Indent.Length : 0;
        }

        if (columns > 0 && left < Math.Min(LeastName, widths[0]))
        {
            Stacked(text, rows, width);
            return;
        }

        foreach (string[] row in rows)
        {
            IReadOnlyList<string> names = WrappedText.Lines(row[0], left);
            var line = new StringBuilder(names[0].PadRight(Math.Min(left, widths[0])));
            for (int c = 1; c < columns; c++)
            {
                line.Append(Indent).Append(
                    ReportBlock.IsOfWords(rows, c) ? row[c].PadRight(widths[c]) : row[c].PadLeft(widths[c]));
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
            foreach (string rest in names.Skip(1))
            {
                text.Append(Indent).Append(rest).Append('\n');
            }
        }
    }

    private static int Longest(IReadOnlyList<string> lines)
    {
        int longest = 0;
        foreach (string line in lines)
        {
            longest = Math.Max(longest, line.Length);
        }

        return longest;
    }

    private static int Longest(IReadOnlyList<string[]> rows, int column)
    {
        int longest = 0;
        foreach (string[] row in rows)
        {
            longest = Math.Max(longest, row[column].Length);
        }

        return longest;
    }

    private static void Stacked(StringBuilder text, IReadOnlyList<string[]> rows, int width)
    {
        string[] heads = rows[0];
        if (heads[0].Length > 0)
        {
            Wrap(text, heads[0] + ":", string.Empty, string.Empty, width);
        }

        foreach (string[] row in rows.Skip(1))
        {
            Wrap(text, row[0], "- ", Indent, width);
            for (int c = 1; c < row.Length; c++)
            {
                if (row[c].Length > 0)
                {
                    Wrap(text, heads[c].Length > 0 ? heads[c] + ": " + row[c] : row[c], Indent + Indent, Indent + Indent + Indent, width);
                }
            }
        }
    }
}
