using System.Text;

namespace Driveline.Reports.Documents;

/// <summary>Blocks as plain text for a terminal or a mail, 78 columns wide.</summary>
internal static class TextRendering
{
    private const int Width = 78;

    public static string Of(IEnumerable<ReportBlock> blocks)
    {
        var text = new StringBuilder();
        foreach (ReportBlock block in blocks)
        {
            switch (block.Kind)
            {
                case ReportBlockKind.Title:
                    Wrap(text, block.Text, string.Empty, string.Empty);
                    text.Append('=', Math.Min(Width, block.Text.Length)).Append("\n\n");
                    break;
                case ReportBlockKind.Heading:
                    text.Append(block.Text).Append('\n').Append('-', Math.Min(Width, block.Text.Length)).Append('\n');
                    break;
                case ReportBlockKind.Lead:
                case ReportBlockKind.Paragraph:
                    Wrap(text, block.Text, string.Empty, string.Empty);
                    text.Append('\n');
                    break;
                case ReportBlockKind.Bullets:
                    foreach (string item in block.Items)
                    {
                        Wrap(text, item, "- ", "  ");
                    }

                    text.Append('\n');
                    break;
                case ReportBlockKind.Numbered or ReportBlockKind.Steps:
                    for (int k = 0; k < block.Items.Count; k++)
                    {
                        string number = (k + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + ". ";
                        Wrap(text, block.Items[k], number, new string(' ', number.Length));
                    }

                    text.Append('\n');
                    break;
                case ReportBlockKind.Sign:
                    foreach (string item in block.Items)
                    {
                        Wrap(text, item, "____________________  ", "  ");
                    }

                    text.Append('\n');
                    break;
                case ReportBlockKind.Table:
                    Table(text, block.Rows);
                    text.Append('\n');
                    break;
            }
        }

        return text.ToString();
    }

    private static void Wrap(StringBuilder text, string content, string first, string rest)
    {
        string indent = first;
        foreach (string line in WrappedText.Lines(content, Width - first.Length))
        {
            text.Append(indent).Append(line).Append('\n');
            indent = rest;
        }
    }

    private static void Table(StringBuilder text, IReadOnlyList<string[]> rows)
    {
        int columns = rows.Count == 0 ? 0 : rows[0].Length;
        int[] widths = [.. Enumerable.Range(0, columns).Select(c => rows.Max(row => row[c].Length))];
        foreach (string[] row in rows)
        {
            var line = new StringBuilder();
            for (int c = 0; c < columns; c++)
            {
                line.Append(c == 0 ? row[c].PadRight(widths[c]) : "  " + row[c].PadLeft(widths[c]));
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }
}
