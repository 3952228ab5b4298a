using Driveline.Findings;
using Driveline.Loads;
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

    /// <summary>The report of a check that lacks facts, with what usual values give; a span of null leaves that out.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Of(SimulationCheck check, SimulationSpan? span, ReportOptions options) =>
        MarkdownRendering.Of(SimulationReport.Checked(check, span, options), null);

    /// <summary>The report of an event that cannot even be set up, for a kind of machine: what is missing, and the cautions.</summary>
    /// <exception cref="ArgumentNullException">The findings or the options are missing.</exception>
    public static string OfMissing(SimulatedEvent happened, IReadOnlyList<Finding> missing, MachineKind machine, ReportOptions options) =>
        MarkdownRendering.Of(SimulationReport.OfMissing(happened, missing ?? throw new ArgumentNullException(nameof(missing)), machine,
            options ?? throw new ArgumentNullException(nameof(options))), null);
}
