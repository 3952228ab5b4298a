using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A review of a slip clutch as one JSON object for other programs.</summary>
/// <remarks>
/// Torques are at the clutch itself.
/// </remarks>
public static class ClutchJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(ClutchReview review) => Of(review, [], ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, ResultOptions options) =>
        ResultDocument.Of(
            ResultKind.Clutch, ClutchRows.Shape,
            new ReviewedClutch(Guard.NotNull(review, nameof(review)), Guard.NotNull(procedures, nameof(procedures))), options);
}
