namespace Driveline.Torsion;

/// <summary>A workspace for each of the last few shapes of models, so that runs of different shapes by turns allocate nothing.</summary>
/// <remarks>Not for two threads at a time: give each thread its own.</remarks>
internal sealed class TransientWorkspaces
{
    private const int Most = 8;

    private readonly List<TransientWorkspace> kept = [];
    private int oldest;

    /// <summary>The workspace of a mechanism's shape: the one that such a mechanism ran in before, when it is still kept.</summary>
    public TransientWorkspace Of(Mechanism m)
    {
        foreach (TransientWorkspace workspace in kept)
        {
            if (workspace.Fits(m))
            {
                return workspace;
            }
        }

        if (kept.Count < Most)
        {
            kept.Add(new TransientWorkspace());
            return kept[kept.Count - 1];
        }

        oldest = (oldest + 1) % Most;
        return kept[oldest];
    }
}
