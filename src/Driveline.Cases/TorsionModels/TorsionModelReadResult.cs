using System.Diagnostics.CodeAnalysis;

namespace Driveline.Cases.TorsionModels;

/// <summary>What reading a model file gave: the model, or everything that is wrong with it.</summary>
public sealed class TorsionModelReadResult : DocumentReadResult
{
    internal TorsionModelReadResult(TorsionModelFile? model, IReadOnlyList<CaseError> errors)
        : base(errors) => Model = errors.Count == 0 ? model : null;

    /// <summary>The model; null when anything is wrong.</summary>
    public TorsionModelFile? Model { get; }

    /// <summary>True when there is a model.</summary>
    [MemberNotNullWhen(true, nameof(Model))]
    public bool IsRead => Model is not null;
}
