using System.Text;

namespace Driveline.Reports.Documents;

/// <summary>Blocks as one self-contained HTML page: no script, nothing loaded from elsewhere.</summary>
internal static class HtmlRendering
{
    /// <param name="blocks">The blocks.</param>
    /// <param name="language">Language of the texts, e.g. "en".</param>
    /// <param name="svg">The picture as an SVG element.</param>
    public static string Of(IReadOnlyList<ReportBlock> blocks, string language, string svg)
    {
        string title = blocks.FirstOrDefault(b => b.Kind == ReportBlockKind.Title)?.Text ?? string.Empty;
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"").Append(language).Append("\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>").Append(Escape(title))
            .Append("</title>\n<style>").Append(HtmlStyle.Css).Append("</style>\n</head>\n<body>\n");
        foreach (ReportBlock block in blocks)
        {
            Append(html, block, svg);
        }

        return html.Append("</body>\n</html>\n").ToString();
    }

    /// <summary>A text in which no character means markup.</summary>
    public static string Escape(string text) => text
        .Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;").Replace("\"", "&quot;").Replace("'", "&#39;");

    private static void Append(StringBuilder html, ReportBlock block, string svg)
    {
        switch (block.Kind)
        {
            case ReportBlockKind.Title:
                Element(html, "h1", block.Text);
                break;
            case ReportBlockKind.Heading:
                Element(html, "h2", block.Text);
                break;
            case ReportBlockKind.Lead:
                html.Append("<p class=\"lead ").Append(block.Tone.ToString().ToLowerInvariant()).Append("\">").Append(Escape(block.Text))
                    .Append("</p>\n");
                break;
            case ReportBlockKind.Paragraph:
                Element(html, "p", block.Text);
                break;
            case ReportBlockKind.Bullets:
                List(html, "ul", block.Items);
                break;
            case ReportBlockKind.Numbered:
                List(html, "ol", block.Items);
                break;
            case ReportBlockKind.Table:
                Table(html, block.Rows);
                break;
            case ReportBlockKind.Picture:
                html.Append("<figure>\n").Append(svg).Append("\n</figure>\n");
                break;
        }
    }

    private static void Element(StringBuilder html, string name, string text) =>
        html.Append('<').Append(name).Append('>').Append(Escape(text)).Append("</").Append(name).Append(">\n");

    private static void List(StringBuilder html, string name, IReadOnlyList<string> items)
    {
        html.Append('<').Append(name).Append(">\n");
        foreach (string item in items)
        {
            Element(html, "li", item);
        }

        html.Append("</").Append(name).Append(">\n");
    }

    private static void Table(StringBuilder html, IReadOnlyList<string[]> rows)
    {
        html.Append("<table>\n<thead>\n");
        for (int r = 0; r < rows.Count; r++)
        {
            html.Append("<tr>");
            foreach (string cell in rows[r])
            {
                html.Append(r == 0 ? "<th scope=\"col\">" : "<td>").Append(Escape(cell)).Append(r == 0 ? "</th>" : "</td>");
            }

            html.Append(r == 0 ? "</tr>\n</thead>\n<tbody>\n" : "</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }
}
