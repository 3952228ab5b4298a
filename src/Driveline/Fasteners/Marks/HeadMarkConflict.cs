namespace Driveline.Fasteners;

/// <summary>Marks on a head that do not belong to what the bolt is said to be.</summary>
internal sealed class HeadMarkConflict(string stated, HeadMark mark, IReadOnlyList<HeadMarkCandidate> candidates)
{
    /// <summary>What the bolt is said to be.</summary>
    public string Stated { get; } = stated;

    /// <summary>What is seen on its head.</summary>
    public HeadMark Mark { get; } = mark;

    /// <summary>What the mark may mean, in one text; "not known" when nothing held has it.</summary>
    public string Meaning { get; } = candidates.Count == 0 ? "not known" : string.Join(", ", candidates.Select(c => c.Name).Distinct());
}
