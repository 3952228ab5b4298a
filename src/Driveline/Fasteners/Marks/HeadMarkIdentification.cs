using Driveline.Findings;

namespace Driveline.Fasteners;

/// <summary>What a bolt with a given head mark and size may be, and how to settle it.</summary>
public sealed class HeadMarkIdentification
{
    internal HeadMarkIdentification(
        HeadMark mark, ScrewThread thread, IReadOnlyList<HeadMarkCandidate> candidates, IReadOnlyList<Finding> findings)
    {
        Mark = mark;
        Thread = thread;
        Candidates = candidates;
        Findings = findings;
    }

    /// <summary>What was seen.</summary>
    public HeadMark Mark { get; }

    /// <summary>The thread.</summary>
    public ScrewThread Thread { get; }

    /// <summary>What it may be, likeliest first; empty when nothing held has the mark.</summary>
    public IReadOnlyList<HeadMarkCandidate> Candidates { get; }

    /// <summary>What to notice and how to settle which candidate it is.</summary>
    public IReadOnlyList<Finding> Findings { get; }
}
