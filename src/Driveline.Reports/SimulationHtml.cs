using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Simulations;

namespace Driveline.Reports;

/// <summary>A simulated engagement or strike as one self-contained HTML page: the content of <see cref="SimulationText"/>.</summary>
public static class SimulationHtml
{
    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(SimulationCheck check, ReportOptions options) =>
        HtmlRendering.Page(SimulationReport.Checked(check, options), "page.kind.simulation", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Fragment(SimulationCheck check, ReportOptions options) =>
        HtmlRendering.Fragment(SimulationReport.Checked(check, options), options);
}
