using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>A caution as data: a stable code, by which its text is found, and where it comes from. No renderer may drop one.</summary>
public sealed partial class Caution
{
    internal Caution(string code, Basis source)
    {
        Code = Guard.NotBlank(code, "Code of a caution", nameof(code));
        Source = source;
    }

    /// <summary>Stable code, e.g. "caution.stopAndKeyOut".</summary>
    public string Code { get; }

    /// <summary>Where it comes from.</summary>
    public Basis Source { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
