namespace Driveline.Cases;

/// <summary>What reading a document gave: what was read, or everything that is wrong with it. All readers give this shape.</summary>
public abstract class DocumentReadResult
{
    private protected DocumentReadResult(IReadOnlyList<CaseError> errors) => Errors = errors;

    /// <summary>All that is wrong, in the order of the file; empty when it was read.</summary>
    public IReadOnlyList<CaseError> Errors { get; }

    /// <summary>The messages by the path they are about, as web APIs answer them; the file as a whole has the path "".</summary>
    /// <returns>Paths and messages in the order of the file; empty when nothing is wrong.</returns>
    public IDictionary<string, string[]> ErrorsByPath() => CaseError.ByPath(Errors);
}
