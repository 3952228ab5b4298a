using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>What a mark on a bolt head can mean.</summary>
public static class HeadMarks
{
    /// <summary>What a bolt with this mark and thread may be.</summary>
    /// <param name="mark">What is seen on the head.</param>
    /// <param name="thread">Its thread, which rules out grades not made in that size.</param>
    public static HeadMarkIdentification Identify(HeadMark mark, ScrewThread thread)
    {
        Guard.NotNull(mark, nameof(mark));
        Guard.NotNull(thread, nameof(thread));
        return new HeadMarkIdentification(mark, thread, [], []);
    }
}
