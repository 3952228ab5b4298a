using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A verdict as one JSON object for other programs.</summary>
/// <remarks>
/// Torques are in N·m, referred to the tractor's PTO, and named so. A margin is a ratio at the element's own place; null when it is not
/// known, as when the other side has no end. Every caution is always written.
/// </remarks>
public static class VerdictJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(ProtectionVerdict verdict) => Of(verdict, ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(ProtectionVerdict verdict, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Assess, VerdictRows.Shape, Guard.NotNull(verdict, nameof(verdict)), options);
}
