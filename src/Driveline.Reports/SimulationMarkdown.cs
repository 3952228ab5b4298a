using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Simulations;

namespace Driveline.Reports;

/// <summary>A simulated engagement or strike as Markdown: the content of <see cref="SimulationText"/>.</summary>
public static class SimulationMarkdown
{
    /// <summary>The report with options, without pictures.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Of(SimulationCheck check, ReportOptions options) =>
        MarkdownRendering.Of(SimulationReport.Checked(check, options), null);
}
