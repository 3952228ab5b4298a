using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>The style of HTML fragments, for the page that takes them up.</summary>
public static class ReportStyle
{
    /// <summary>
    /// Style rules for every fragment of this library; put them into the page once. Every class begins with "dl-". Font and size are those
    /// of the page, and so is the colour scheme: a page with <c>color-scheme: light dark</c> gets dark reports on a dark screen.
    /// </summary>
    public const string Css = HtmlStyle.Fragment;
}
