using Driveline.Cases;

namespace Driveline.Sweeps.Rows;

/// <summary>A case that values are put into, row by row, by one thread.</summary>
internal sealed class PatchedCase
{
    public PatchedCase(CaseFile file, PatchedObject facts)
    {
        File = file;
        Facts = facts;
    }

    public CaseFile File { get; }

    public PatchedObject Facts { get; }
}
