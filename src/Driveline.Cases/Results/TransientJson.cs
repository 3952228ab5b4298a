using Driveline.Quantities;
using Driveline.Torsion;

namespace Driveline.Cases.Results;

/// <summary>What a run of a bare torsional model found, as one JSON object for other programs.</summary>
/// <remarks>Values are those of <see cref="TransientResult"/> at full precision; units stand in the members' names.</remarks>
public static class TransientJson
{
    /// <summary>The result in English with metric units, of no named model.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs; when it is written.</exception>
    public static ResultDocument Of(TransientResult run) => Of(run, ResultOptions.Default);

    /// <summary>The result with its title, language and units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs; when it is written.</exception>
    public static ResultDocument Of(TransientResult run, ResultOptions options) =>
        ResultDocument.Of(ResultKind.Transient, TransientRows.Shape, Guard.NotNull(run, nameof(run)), options);
}
