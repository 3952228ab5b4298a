using System.Text;

namespace Driveline.Reports.Documents;

/// <summary>Blocks as Markdown. Every text is escaped: a name from a case never becomes markup.</summary>
internal static class MarkdownRendering
{
    /// <param name="blocks">The blocks.</param>
    /// <param name="picture">Address of the first picture, relative to the report; null leaves it out.</param>
    public static string Of(IEnumerable<ReportBlock> blocks, string? picture)
    {
        var text = new StringBuilder();
        foreach (ReportBlock block in blocks)
        {
            switch (block.Kind)
            {
                case ReportBlockKind.Title:
                    text.Append("# ").Append(Escape(block.Text)).Append("\n\n");
                    break;
                case ReportBlockKind.Heading:
                    text.Append("## ").Append(Escape(block.Text)).Append("\n\n");
                    break;
                case ReportBlockKind.Lead:
                    text.Append("**").Append(Escape(block.Text)).Append("**\n\n");
                    break;
                case ReportBlockKind.Paragraph:
                    text.Append(Escape(block.Text)).Append("\n\n");
                    break;
                case ReportBlockKind.Bullets:
                    List(text, block.Items, k => "- ");
                    break;
                case ReportBlockKind.Numbered:
                    List(text, block.Items, k => (k + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + ". ");
                    break;
                case ReportBlockKind.Step:
                    text.Append(Escape(block.Text)).Append("  \n").Append(Escape(block.Items[0])).Append("\n\n");
                    break;
                case ReportBlockKind.Sign:
                    List(text, block.Items, k => "\\_\\_\\_\\_\\_\\_\\_\\_ ");
                    break;
                case ReportBlockKind.Steps:
                    List(text, block.Items, k => (k + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + ". [ ] ");
                    break;
                case ReportBlockKind.Table:
                    Table(text, block.Rows);
                    break;
                case ReportBlockKind.Picture when picture is not null:
                    text.Append("![").Append(Escape(block.Text)).Append("](<").Append(Address(picture)).Append(">)\n\n");
                    picture = null;
                    break;
            }
        }

        return text.ToString();
    }

    /// <summary>A text in which no character means markup or HTML.</summary>
    public static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length + 8);
        for (int k = 0; k < text.Length; k++)
        {
            char c = text[k];
            bool startsList = (k == 0 && c is '-' or '+' or '=')
                || (c is '.' or ')' && k > 0 && IsAllDigits(text, k) && (k + 1 == text.Length || text[k + 1] == ' '));
            if (c == '&')
            {
                escaped.Append("&amp;");
            }
            else if (c == '<')
            {
                escaped.Append("&lt;");
            }
            else if (c is '\\' or '`' or '*' or '_' or '[' or ']' or '|' or '~' or '#' or '>' or '$' || startsList)
            {
                escaped.Append('\\').Append(c);
            }
            else
            {
                escaped.Append(c);
            }
        }

        return escaped.ToString();
    }

    private static bool IsAllDigits(string text, int length)
    {
        for (int k = 0; k < length; k++)
        {
            if (text[k] is < '0' or > '9')
            {
                return false;
            }
        }

        return true;
    }

    private static string Address(string picture) => string.Join("/", picture.Split('/').Select(Uri.EscapeDataString));

    private static void List(StringBuilder text, IReadOnlyList<string> items, Func<int, string> mark)
    {
        for (int k = 0; k < items.Count; k++)
        {
            text.Append(mark(k)).Append(Escape(items[k])).Append('\n');
        }

        text.Append('\n');
    }

    private static void Table(StringBuilder text, IReadOnlyList<string[]> rows)
    {
        for (int r = 0; r < rows.Count; r++)
        {
            text.Append("| ").Append(string.Join(" | ", rows[r].Select(Escape))).Append(" |\n");
            if (r == 0)
            {
                string marks = string.Concat(rows[r].Select((_, c) => ReportBlock.IsOfWords(rows, c) ? " :-- |" : " --: |"));
                text.Append('|').Append(marks).Append('\n');
            }
        }

        text.Append('\n');
    }
}
