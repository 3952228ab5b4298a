using Driveline.Fasteners;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>What a head mark may mean as one JSON object.</summary>
public static class IdentifyJson
{
    /// <summary>The result in English with metric units, of no named case.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(HeadMarkIdentification identification) => Of(identification, ResultOptions.Default);

    /// <summary>The result with its case, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static ResultDocument Of(HeadMarkIdentification identification, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Identify, IdentifyRows.Shape, Guard.NotNull(identification, nameof(identification)), options);
}
