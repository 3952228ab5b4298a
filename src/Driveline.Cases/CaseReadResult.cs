namespace Driveline.Cases;

/// <summary>What reading a case file gave: the case, or everything that is wrong with it.</summary>
public sealed class CaseReadResult
{
    internal CaseReadResult(CaseFile? read, IReadOnlyList<CaseError> errors)
    {
        Case = errors.Count == 0 ? read : null;
        Errors = errors;
    }

    /// <summary>The case; null when anything is wrong.</summary>
    public CaseFile? Case { get; }

    /// <summary>All that is wrong, in the order of the file; empty when the case was read.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>True when there is a case.</summary>
    public bool IsRead => Case is not null;
}
