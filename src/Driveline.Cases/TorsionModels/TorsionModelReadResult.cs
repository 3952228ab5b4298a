namespace Driveline.Cases.TorsionModels;

/// <summary>What reading a model file gave: the model, or everything that is wrong with it.</summary>
public sealed class TorsionModelReadResult
{
    internal TorsionModelReadResult(TorsionModelFile? model, IReadOnlyList<CaseError> errors)
    {
        Model = errors.Count == 0 ? model : null;
        Errors = errors;
    }

    /// <summary>The model; null when anything is wrong.</summary>
    public TorsionModelFile? Model { get; }

    /// <summary>All that is wrong, in the order of the file; empty when the model was read.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>True when there is a model.</summary>
    public bool IsRead => Model is not null;
}
