using System.Text;
using Driveline.Findings;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Documents;

/// <summary>Writes blocks as HTML elements below a <c>dl-report</c>.</summary>
internal sealed class HtmlBlocks(StringBuilder html, Phrase phrase)
{
    // More columns than these do not fit beside each other on a phone: each row becomes a list there.
    private const int MostNarrowColumns = 4;

    private static readonly Severity[] Severities = [Severity.Danger, Severity.Warning];

    private string caption = string.Empty;

    public void Append(IReadOnlyList<ReportBlock> blocks)
    {
        foreach (ReportBlock block in blocks)
        {
            Append(block);
        }
    }

    private void Append(ReportBlock block)
    {
        switch (block.Kind)
        {
            case ReportBlockKind.Title:
                Element("h1", block.Text);
                break;
            case ReportBlockKind.Heading:
                caption = block.Text;
                html.Append(block.IsSheet ? "<h2 class=\"dl-sheet\">" : "<h2>").Append(Escape(block.Text)).Append("</h2>\n");
                break;
            case ReportBlockKind.Lead:
                Lead(block);
                break;
            case ReportBlockKind.Paragraph:
                Element("p", block.Text);
                break;
            case ReportBlockKind.Bullets:
                List("ul", block.Items);
                break;
            case ReportBlockKind.Numbered:
                List("ol", block.Items);
                break;
            case ReportBlockKind.Steps:
                Steps(block.Items);
                break;
            case ReportBlockKind.Step:
                Step(block);
                break;
            case ReportBlockKind.Sign:
                Sign(block.Items);
                break;
            case ReportBlockKind.Table:
                Table(block.Rows, block.Math);
                break;
            case ReportBlockKind.Picture:
                Figure(block);
                break;
        }
    }

    private void Lead(ReportBlock block)
    {
        string tone = block.Tone.ToString();
        html.Append("<p class=\"dl-lead dl-").Append(tone.ToLowerInvariant()).Append("\">");
        if (block.Tone != LeadTone.Neutral)
        {
            html.Append("<strong class=\"dl-word\">").Append(Escape(phrase.Of("page.tone." + tone))).Append("</strong> ");
        }

        html.Append(Escape(block.Text)).Append("</p>\n");
    }

    private void Figure(ReportBlock block)
    {
        html.Append("<figure>\n<div class=\"dl-at-wide\">").Append(block.Drawn!(PictureFrame.Wide))
            .Append("</div>\n<div class=\"dl-at-narrow\">").Append(block.Drawn(PictureFrame.Narrow)).Append("</div>\n<figcaption>")
            .Append(Escape(block.Text)).Append("</figcaption>\n</figure>\n");
    }

    private void Element(string name, string text) =>
        html.Append('<').Append(name).Append('>').Append(Escape(text)).Append("</").Append(name).Append(">\n");

    private void List(string name, IReadOnlyList<string> items)
    {
        html.Append('<').Append(name).Append(">\n");
        foreach (string item in items)
        {
            html.Append("<li>");
            Noticed(item);
            html.Append("</li>\n");
        }

        html.Append("</").Append(name).Append(">\n");
    }

    // "DANGER: ..." and its lesser kin are told apart by more than their first word.
    private void Noticed(string item)
    {
        foreach (Severity severity in Severities)
        {
            string word = phrase.Of("severity." + severity);
            if (item.StartsWith(word + ": ", StringComparison.Ordinal))
            {
                html.Append("<strong class=\"dl-").Append(severity.ToString().ToLowerInvariant()).Append("\">").Append(Escape(word))
                    .Append(":</strong>").Append(Escape(item.Substring(word.Length + 1)));
                return;
            }
        }

        html.Append(Escape(item));
    }

    private void Steps(IReadOnlyList<string> items)
    {
        html.Append("<ol class=\"dl-steps\">\n");
        foreach (string item in items)
        {
            html.Append("<li><label><input type=\"checkbox\"> ").Append(Escape(item)).Append("</label></li>\n");
        }

        html.Append("</ol>\n");
    }

    private void Step(ReportBlock block)
    {
        html.Append("<div class=\"dl-sum\">");
        foreach (string math in block.Math)
        {
            Math(math);
            html.Append(' ');
        }

        html.Append("<p class=\"dl-note\">").Append(Escape(block.Items[0])).Append("</p></div>\n");
    }

    private void Math(string inside) => html.Append("<math xmlns=\"http://www.w3.org/1998/Math/MathML\" displaystyle=\"true\"><mrow>")
        .Append(inside).Append("</mrow></math>");

    private void Sign(IReadOnlyList<string> items)
    {
        html.Append("<div class=\"dl-sign\">");
        foreach (string item in items)
        {
            Element("div", item);
        }

        html.Append("</div>\n");
    }

    private void Table(IReadOnlyList<string[]> rows, IReadOnlyList<string> symbols)
    {
        bool isWide = symbols.Count > 0 || (rows.Count > 0 && rows[0].Length > MostNarrowColumns);
        html.Append(isWide ? "<table class=\"dl-wide\">\n" : "<table>\n").Append("<caption class=\"dl-sr\">")
            .Append(Escape(caption.Length > 0 ? caption : phrase.Of("page.table"))).Append("</caption>\n<thead>\n");
        for (int r = 0; r < rows.Count; r++)
        {
            html.Append("<tr>");
            for (int c = 0; c < rows[r].Length; c++)
            {
                string cell = Escape(rows[r][c]);
                string words = c > 0 && ReportBlock.IsOfWords(rows, c) ? " class=\"dl-words\"" : string.Empty;
                if (r == 0)
                {
                    html.Append("<th scope=\"col\"").Append(words).Append('>').Append(cell).Append("</th>");
                }
                else if (c == 0)
                {
                    html.Append("<th scope=\"row\">");
                    if (symbols.Count >= r)
                    {
                        Math(symbols[r - 1]);
                        cell = cell.Substring(cell.IndexOf(": ", StringComparison.Ordinal));
                    }

                    html.Append(cell).Append("</th>");
                }
                else
                {
                    html.Append("<td").Append(words).Append(" data-head=\"").Append(Escape(rows[0][c]))
                        .Append("\">").Append(cell).Append("</td>");
                }
            }

            html.Append(r == 0 ? "</tr>\n</thead>\n<tbody>\n" : "</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static string Escape(string text) => HtmlRendering.Escape(text);
}
