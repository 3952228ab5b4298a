using Driveline.Choosing;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A choice of bolts, best first, and of clutch settings as one JSON object for other programs.</summary>
/// <remarks>
/// As <see cref="VerdictJson"/>. A probability is never written below 0.001 or above 0.999. Torques of settings are at the clutch itself:
/// lowNm and highNm of a window are expected ones while it slips.
/// </remarks>
public static class ChoiceJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(BoltChoice choice) => Of(choice, [], ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(BoltChoice choice, IReadOnlyList<ClutchChoice> settings, ResultOptions options) =>
        ResultDocument.Of(
            ResultKind.Choose, ChoiceRows.Shape,
            new ChosenInCase(Guard.NotNull(choice, nameof(choice)), Guard.NotNull(settings, nameof(settings))), options);
}
