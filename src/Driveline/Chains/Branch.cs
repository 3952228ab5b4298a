using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A side drive that takes a stated share of the power; the chain goes on after it with the rest.</summary>
public sealed class Branch : Element
{
    private Branch(string name, RatioBand powerShare, IReadOnlyList<Element> elements)
        : base(name)
    {
        PowerShare = powerShare;
        Elements = elements;
    }

    /// <summary>Share of the power in normal work that goes into the branch, above 0 to 1.</summary>
    public RatioBand PowerShare { get; }

    /// <summary>The elements of the branch, in order.</summary>
    public IReadOnlyList<Element> Elements { get; }

    /// <summary>A side drive.</summary>
    /// <param name="name">Name by which people know it.</param>
    /// <param name="powerShare">Share of the power in normal work; above 0 to 1.</param>
    /// <param name="elements">At least one element.</param>
    /// <exception cref="ArgumentException">The name is blank, the share is not above 0 to 1, or no element is given.</exception>
    public static Branch Of(string name, RatioBand powerShare, params Element[] elements)
    {
        Guard.NotNull(powerShare, nameof(powerShare));
        Guard.NotNull(elements, nameof(elements));
        if (!(powerShare.Low > 0 && powerShare.SiBand.High <= 1))
        {
            throw Guard.OutOfRange("Power share of a branch", "above 0 to 1", powerShare.Low > 0 ? powerShare.SiBand.High : powerShare.Low,
                string.Empty, nameof(powerShare));
        }

        return elements.Length > 0
            ? new Branch(name, powerShare, [.. elements])
            : throw new ArgumentException("A branch needs at least one element; got none.", nameof(elements));
    }
}
