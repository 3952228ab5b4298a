using Driveline.Choosing;
using Driveline.Reports.Choices;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>A choice of bolts and settings as one self-contained HTML page: the content of <see cref="ChoiceText"/>.</summary>
public static class ChoiceHtml
{
    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options) =>
        HtmlRendering.Page(ChoiceReport.Checked(choice, settings, options), "page.kind.choice", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Fragment(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ReportOptions options) =>
        HtmlRendering.Fragment(ChoiceReport.Checked(choice, settings, options), options);
}
