using Driveline.Advice;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>An advice as one JSON object for other programs.</summary>
/// <remarks>
/// Amounts of money are in the case's currency. A reason's factor says how many times as likely it makes the cause. Every caution is
/// always written.
/// </remarks>
public static class AdviceJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(OwnerAdvice advice) => Of(advice, ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(OwnerAdvice advice, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Advise, AdviceRows.Shape, Guard.NotNull(advice, nameof(advice)), options);
}
