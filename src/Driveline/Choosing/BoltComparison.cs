using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Choosing;

/// <summary>A bolt against the fitted and the specified one, each as it acts with a free hub.</summary>
internal sealed class BoltComparison
{
    private BoltComparison(bool isFitted, bool? strongerThanFitted, bool? strongerThanSpecified, bool isNoStronger)
    {
        IsFitted = isFitted;
        IsStrongerThanFitted = strongerThanFitted;
        IsStrongerThanSpecified = strongerThanSpecified;
        IsNoStronger = isNoStronger;
    }

    public bool IsFitted { get; }

    public bool? IsStrongerThanFitted { get; }

    public bool? IsStrongerThanSpecified { get; }

    /// <summary>True when even its strongest specimen holds no more than that of the fitted one and, where known, of the specified one.</summary>
    public bool IsNoStronger { get; }

    public static BoltComparison Of(ShearBoltDevice bolt, bool isFitted, ProtectiveDevice fitted, ProtectiveDevice? specified, ProtectionPolicy policy) => new(
        isFitted,
        isFitted ? false : IsStronger(bolt, fitted, policy),
        specified is null ? null : IsStronger(bolt, specified, policy),
        HoldsNoMore(bolt, fitted, policy) && (specified is null || HoldsNoMore(bolt, specified, policy)));

    private static bool? IsStronger(ShearBoltDevice bolt, ProtectiveDevice other, ProtectionPolicy policy) =>
        FittedAgainstSpecified.Compare(bolt, other, policy).Answer switch
        {
            FittedComparison.NotKnown => null,
            FittedComparison answer => answer == FittedComparison.Stronger,
        };

    private static bool HoldsNoMore(ShearBoltDevice bolt, ProtectiveDevice other, ProtectionPolicy policy) =>
        IsStronger(bolt, other, policy) == false
        && bolt.InGoodOrder is { IsBounded: true } own && other.InGoodOrder is { IsBounded: true } named
        && own.SiBand.High <= named.SiBand.High * (1 + policy.SameWithin);
}
