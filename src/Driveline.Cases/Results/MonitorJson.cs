using Driveline.Monitoring;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>What a log shows, as one JSON object for other programs.</summary>
/// <remarks>Torques are in N·m and times on the clock of the log. Every caution is always written.</remarks>
public static class MonitorJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(MonitorReport report) => Of(report, ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(MonitorReport report, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Watch, WatchedRows.Shape, Guard.NotNull(report, nameof(report)), options);
}
