using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Reports.Clutches;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>Everything about one slip clutch as one self-contained HTML page: the content of <see cref="ClutchText"/>.</summary>
public static class ClutchHtml
{
    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options) =>
        HtmlRendering.Page(ClutchReport.Checked(review, procedures, options), "page.kind.clutch", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Fragment(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options) =>
        HtmlRendering.Fragment(ClutchReport.Checked(review, procedures, options), options);
}
