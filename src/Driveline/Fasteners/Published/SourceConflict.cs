using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>Two sources that disagree on one number; both are kept.</summary>
internal sealed class SourceConflict
{
    internal SourceConflict(string subject, Sourced used, Sourced other)
    {
        Subject = Guard.NotBlank(subject, "Subject", nameof(subject));
        Used = Guard.NotNull(used, nameof(used));
        Other = Guard.NotNull(other, nameof(other));
    }

    /// <summary>What the number is, e.g. "maximum core hardness".</summary>
    public string Subject { get; }

    /// <summary>The reading in use.</summary>
    public Sourced Used { get; }

    /// <summary>The other reading.</summary>
    public Sourced Other { get; }

    /// <inheritdoc/>
    public override string ToString() => Subject + ": " + Used + " in use; " + Other + " elsewhere";
}
