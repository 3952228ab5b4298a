using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Reports.Clutches;
using Driveline.Reports.Documents;

namespace Driveline.Reports;

/// <summary>
/// Everything about one slip clutch as plain text: torques, springs, a new setting, heat, findings, service steps; last the cautions.
/// </summary>
public static class ClutchText
{
    /// <summary>The English text in metric units, with the service steps its state calls for.</summary>
    public static string Of(ClutchReview review) =>
        Of(review, (review ?? throw new ArgumentNullException(nameof(review))).Procedures, ReportOptions.Default);

    /// <summary>The text with service procedures of choice.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ReportOptions options) =>
        TextRendering.Of(ClutchReport.Checked(review, procedures, options), options.TextWidth);
}
