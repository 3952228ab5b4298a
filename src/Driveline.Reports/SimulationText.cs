using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Simulations;

namespace Driveline.Reports;

/// <summary>
/// A simulated engagement or strike as plain text: whether the protection acts, the highest torques, what slipped, the findings, and last
/// the cautions.
/// </summary>
public static class SimulationText
{
    /// <summary>The report in metric units.</summary>
    public static string Of(SimulationCheck check) => Of(check, ReportOptions.Default);

    /// <summary>The report with options.</summary>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Of(SimulationCheck check, ReportOptions options) => TextRendering.Of(
        SimulationReport.Checked(check, options), options.TextWidth);

    /// <summary>The report of a check that lacks facts, with what usual values in their place give.</summary>
    /// <param name="check">The check.</param>
    /// <param name="span">Its span; null for the report of the check alone.</param>
    /// <param name="options">Language, units and title.</param>
    /// <exception cref="ArgumentNullException">The check or the options are missing.</exception>
    public static string Of(SimulationCheck check, SimulationSpan? span, ReportOptions options) =>
        TextRendering.Of(SimulationReport.Checked(check, span, options), options.TextWidth);

    /// <summary>The report of an event that cannot even be set up: what is missing, and the cautions.</summary>
    /// <exception cref="ArgumentNullException">The findings or the options are missing.</exception>
    public static string OfMissing(SimulatedEvent happened, IReadOnlyList<Finding> missing, ReportOptions options) =>
        OfMissing(happened, missing, MachineKind.NotKnown, options);

    /// <summary>The same for a kind of machine, with its cautions.</summary>
    /// <exception cref="ArgumentNullException">The findings or the options are missing.</exception>
    public static string OfMissing(SimulatedEvent happened, IReadOnlyList<Finding> missing, MachineKind machine, ReportOptions options) =>
        TextRendering.Of(SimulationReport.OfMissing(
            happened, missing ?? throw new ArgumentNullException(nameof(missing)), machine, options
                ?? throw new ArgumentNullException(nameof(options))), options.TextWidth);
}
