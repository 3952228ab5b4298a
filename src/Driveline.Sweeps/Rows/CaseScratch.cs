using Driveline.Torsion;

namespace Driveline.Sweeps.Rows;

/// <summary>What a thread needs to answer rows, made once and used for each of them.</summary>
internal sealed class CaseScratch
{
    public CaseScratch(int factors) => Values = new object[factors];

    /// <summary>A place for the value of each factor.</summary>
    public object[] Values { get; }

    /// <summary>The case of the last row; null before there is one.</summary>
    public PatchedCase? Case { get; set; }

    /// <summary>Memory that simulations run in.</summary>
    public TransientWorkspaces Workspaces { get; } = new();
}
