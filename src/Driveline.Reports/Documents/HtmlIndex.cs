using System.Text;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Documents;

/// <summary>A page that lists other pages, each with what it says.</summary>
internal static class HtmlIndex
{
    public static string Of(IReadOnlyList<(string File, string Title, string Says)> pages, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        string title = HtmlRendering.Escape(phrase.Of("page.kind.index"));
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"").Append(options.Texts.LanguageCode)
            .Append("\" class=\"dl-page\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>").Append(title)
            .Append("</title>\n<style>").Append(HtmlStyle.Css).Append(".dl-report td,.dl-report th{text-align:left}</style>\n</head>\n")
            .Append("<body class=\"dl-body\">\n<main class=\"dl-report\">\n<h1>").Append(title)
            .Append("</h1>\n<table>\n<caption class=\"dl-sr\">").Append(title).Append("</caption>\n<thead>\n<tr><th scope=\"col\">")
            .Append(HtmlRendering.Escape(phrase.Of("page.index.case"))).Append("</th><th scope=\"col\">")
            .Append(HtmlRendering.Escape(phrase.Of("page.index.says"))).Append("</th></tr>\n</thead>\n<tbody>\n");
        foreach ((string file, string name, string says) in pages)
        {
            html.Append("<tr><th scope=\"row\"><a href=\"").Append(Uri.EscapeDataString(file)).Append("\">")
                .Append(HtmlRendering.Escape(CleanText.Title(name))).Append("</a></th><td>")
                .Append(HtmlRendering.Escape(CleanText.Line(says))).Append("</td></tr>\n");
        }

        return html.Append("</tbody>\n</table>\n</main>\n<footer class=\"dl-foot\">Driveline ").Append(HtmlRendering.Version).Append(" · ")
            .Append(HtmlRendering.Escape(phrase.Of("page.foot"))).Append("</footer>\n</body>\n</html>\n").ToString();
    }
}
