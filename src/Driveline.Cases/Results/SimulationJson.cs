using Driveline.Cases.Questions;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A simulated engagement or strike as one JSON object for other programs.</summary>
/// <remarks>
/// Torques are at the element's own place.
/// </remarks>
public static class SimulationJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(CaseSimulation run) => Of(run, ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(CaseSimulation run, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Simulate, SimulationRows.Shape, Guard.NotNull(run, nameof(run)), options);
}
