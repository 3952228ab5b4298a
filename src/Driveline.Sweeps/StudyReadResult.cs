using System.Diagnostics.CodeAnalysis;
using Driveline.Cases;

namespace Driveline.Sweeps;

/// <summary>What reading a study file gave: the study, or everything that is wrong with it.</summary>
public sealed class StudyReadResult
{
    internal StudyReadResult(Study? read, IReadOnlyList<CaseError> errors)
    {
        Errors = errors;
        Study = errors.Count == 0 ? read : null;
    }

    /// <summary>All that is wrong, in the order of the file; empty when it was read.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>The study; null when anything is wrong.</summary>
    public Study? Study { get; }

    /// <summary>True when there is a study.</summary>
    [MemberNotNullWhen(true, nameof(Study))]
    public bool IsRead => Study is not null;
}
