using System.Text;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Documents;

/// <summary>The head of a page that is handed over; what is not stated is a line to fill in by hand.</summary>
internal static class HtmlHead
{
    public static void Append(StringBuilder html, string? kind, ReportHead head, Phrase phrase)
    {
        html.Append("<header class=\"dl-head\">\n");
        if (kind is not null)
        {
            html.Append("<p class=\"dl-kind\">").Append(HtmlRendering.Escape(kind)).Append("</p>\n");
        }

        html.Append("<dl>\n");
        Field(html, phrase.Of("page.dealer"), head.Dealer);
        Field(html, phrase.Of("page.customer"), head.Customer);
        Field(html, phrase.Of("page.machine"), head.Machine);
        Field(html, phrase.Of("page.date"), head.Date);
        Field(html, phrase.Of("page.number"), head.Number);
        html.Append("</dl>\n</header>\n");
    }

    private static void Field(StringBuilder html, string name, string? value)
    {
        string shown = value is null ? string.Empty : CleanText.Title(value);
        html.Append("<div><dt>").Append(HtmlRendering.Escape(name)).Append("</dt><dd>")
            .Append(shown.Length == 0 ? "&#160;" : HtmlRendering.Escape(shown)).Append("</dd></div>\n");
    }
}
