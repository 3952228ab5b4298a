using Driveline.Findings;
using Driveline.Loads;
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

    /// <summary>The page of a check that lacks facts, with what usual values in their place give; a span of null leaves that out.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Of(SimulationCheck check, SimulationSpan? span, ReportOptions options) =>
        Of(check, span, options, CancellationToken.None);

    /// <summary>The same, until it is stopped: its picture simulates again.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string Of(SimulationCheck check, SimulationSpan? span, ReportOptions options, CancellationToken stop) =>
        HtmlRendering.Page(SimulationReport.Checked(check, span, options, stop), "page.kind.simulation", options);

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Fragment(SimulationCheck check, ReportOptions options) => Fragment(check, options, CancellationToken.None);

    /// <summary>The same, until it is stopped: its picture simulates again.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static string Fragment(SimulationCheck check, ReportOptions options, CancellationToken stop) =>
        HtmlRendering.Fragment(SimulationReport.Checked(check, options, stop), options);

    /// <summary>The report of an event that cannot even be set up, for a kind of machine: what is missing, and the cautions.</summary>
    /// <exception cref="ArgumentNullException">The findings or the options are missing.</exception>
    public static string OfMissing(SimulatedEvent happened, IReadOnlyList<Finding> missing, MachineKind machine, ReportOptions options) =>
        HtmlRendering.Page(SimulationReport.OfMissing(happened, missing ?? throw new ArgumentNullException(nameof(missing)), machine,
            options ?? throw new ArgumentNullException(nameof(options))), "page.kind.simulation", options);
}
