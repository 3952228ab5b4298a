using System.Text;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Documents;

/// <summary>Blocks as one self-contained HTML page, or as a part of a caller's page: no script, nothing loaded from elsewhere.</summary>
internal static class HtmlRendering
{
    /// <summary>A whole page with its head and foot.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="kindCode">Text of what the page is, e.g. "page.kind.verdict".</param>
    /// <param name="options">Title, language and head.</param>
    public static string Page(IReadOnlyList<ReportBlock> blocks, string kindCode, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        string kind = phrase.Of(kindCode);
        string? title = blocks.FirstOrDefault(b => b.Kind == ReportBlockKind.Title)?.Text;
        string foot = "Driveline " + Version;
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"").Append(options.Texts.LanguageCode)
            .Append("\" class=\"dl-page\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
            .Append(Escape(title is null ? kind : title + " – " + kind)).Append("</title>\n<style>").Append(HtmlStyle.Css)
            .Append("@page{@bottom-left{content:\"").Append(foot).Append("\"}}</style>\n</head>\n<body class=\"dl-body\">\n");
        HtmlHead.Append(html, title is null ? null : kind, options.Head, phrase);
        html.Append("<main class=\"dl-report\">\n");
        if (title is null)
        {
            html.Append("<h1>").Append(Escape(kind)).Append("</h1>\n");
        }

        new HtmlBlocks(html, phrase).Append(blocks);
        return html.Append("</main>\n<footer class=\"dl-foot\">").Append(foot).Append(" · ").Append(Escape(phrase.Of("page.foot")))
            .Append("</footer>\n</body>\n</html>\n").ToString();
    }

    /// <summary>A section for a page of the caller's, in its font; it needs the style of <see cref="HtmlStyle.Fragment"/> once.</summary>
    public static string Fragment(IReadOnlyList<ReportBlock> blocks, ReportOptions options)
    {
        var html = new StringBuilder();
        html.Append("<section class=\"dl-report\" lang=\"").Append(options.Texts.LanguageCode).Append("\">\n");
        new HtmlBlocks(html, new Phrase(options.Texts, options.Units)).Append(blocks);
        return html.Append("</section>\n").ToString();
    }

    /// <summary>A text in which no character means markup.</summary>
    public static string Escape(string text) => Unbroken.Of(text)
        .Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;").Replace("\"", "&quot;").Replace("'", "&#39;");

    /// <summary>The version of the library, e.g. "0.1.0".</summary>
    public static string Version { get; } = typeof(HtmlRendering).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";
}
