using System.Diagnostics.CodeAnalysis;

namespace Driveline.Cases;

/// <summary>What reading a case file gave: the case, or everything that is wrong with it.</summary>
public sealed class CaseReadResult : DocumentReadResult
{
    internal CaseReadResult(CaseFile? read, IReadOnlyList<CaseError> errors)
        : base(errors) => Case = errors.Count == 0 ? read : null;

    /// <summary>The case; null when anything is wrong.</summary>
    public CaseFile? Case { get; }

    /// <summary>True when there is a case.</summary>
    [MemberNotNullWhen(true, nameof(Case))]
    public bool IsRead => Case is not null;
}
