using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Reports.Clutches;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>Everything about one slip clutch as Markdown: the content of <see cref="ClutchText"/>.</summary>
public static class ClutchMarkdown
{
    /// <summary>The report with options, without pictures.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options) =>
        MarkdownRendering.Of(ClutchReport.Checked(review, procedures, options), null);
}
