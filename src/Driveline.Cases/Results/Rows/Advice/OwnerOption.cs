using Driveline.Advice;

namespace Driveline.Cases.Results;

/// <summary>One of the owner's options among all, perhaps against one of the others.</summary>
internal sealed class OwnerOption
{
    public OwnerOption(IReadOnlyList<OwnershipCost> all, OwnershipCost cost)
        : this(all, cost, null)
    {
    }

    public OwnerOption(IReadOnlyList<OwnershipCost> all, OwnershipCost cost, OwnershipCost? other)
    {
        All = all;
        Cost = cost;
        Other = other;
    }

    public IReadOnlyList<OwnershipCost> All { get; }

    public OwnershipCost Cost { get; }

    public OwnershipCost? Other { get; }

    /// <summary>Those against which its breaks can be counted; what protects nothing in the end is not compared.</summary>
    public IReadOnlyList<OwnershipCost> Others =>
        [.. All.Where(c => c != Cost && !c.IsLikelyStuck && !Cost.IsLikelyStuck && Cost.Option.BreaksPerYear.SiBand.High > 0)];
}
