using Driveline.Fasteners;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>What a bolt of a grade carries as one JSON object. Areas in mm², loads in N.</summary>
/// <remarks>
/// Loads are stress times area, not rounded; under "published" stand the printed cells, else the loads by the standard's rounding.
/// </remarks>
public static class StrengthJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(BoltStrength strength) => Of(strength, ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(BoltStrength strength, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Strength, StrengthRows.Shape, new StrengthOfBolt(Guard.NotNull(strength, nameof(strength))), options);
}
