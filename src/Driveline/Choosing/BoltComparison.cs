using Driveline.Chains;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Choosing;

/// <summary>A bolt against the fitted and the specified one, each as it acts with a free hub.</summary>
/// <remarks>
/// Against the specified bolt like with like: in the same joint, cut in the same plane. A higher grade in a size no thinner, or a
/// thicker size in a grade no lower, is stronger whatever plane cuts it today; so is a bolt that, as it is cut today, breaks later.
/// </remarks>
internal sealed class BoltComparison
{
    private BoltComparison(bool isFitted, bool isSpecified, bool? strongerThanFitted, bool? strongerThanSpecified, bool isNoStronger)
    {
        IsFitted = isFitted;
        IsSpecified = isSpecified;
        IsStrongerThanFitted = strongerThanFitted;
        IsStrongerThanSpecified = strongerThanSpecified;
        IsNoStronger = isNoStronger;
    }

    public bool IsFitted { get; }

    public bool IsSpecified { get; }

    public bool? IsStrongerThanFitted { get; }

    public bool? IsStrongerThanSpecified { get; }

    /// <summary>
    /// True when even its strongest specimen holds no more than that of the fitted one and, where known, of the specified one.
    /// </summary>
    public bool IsNoStronger { get; }

    public static BoltComparison Of(
        ShearBoltDevice bolt, bool isFitted, ProtectiveDevice fitted, ProtectiveDevice? specified, ProtectionPolicy policy)
    {
        bool isSpecified = IsSame(bolt, specified);
        bool? stronger = specified is null ? null : isSpecified ? false : IsStrongerThanNamed(bolt, specified, policy);
        return new BoltComparison(
            isFitted,
            isSpecified,
            isFitted ? false : IsStronger(bolt, fitted, policy),
            stronger,
            HoldsNoMore(bolt, fitted, policy)
                && (specified is null || isSpecified || (stronger == false && HoldsNoMore(bolt, specified, policy))));
    }

    private static bool IsSame(ShearBoltDevice bolt, ProtectiveDevice? specified) =>
        NamedBolt.OrPinOf(specified) is { } named && NamedBolt.OrPinOf(bolt) is { } own && NamedBolt.IsSame(own, named);

    // Any reason to take it for stronger counts; a doubt of one comparison leaves it open.
    private static bool? IsStrongerThanNamed(ShearBoltDevice bolt, ProtectiveDevice specified, ProtectionPolicy policy)
    {
        bool? asCut = IsStronger(bolt, specified, policy);
        if (NamedBolt.Of(specified) is not { } named || NamedBolt.Of(bolt) is not { } own)
        {
            return asCut;
        }

        if (NamedBolt.IsMore(own, named))
        {
            return true;
        }

        ShearBoltJoint joint = ((ShearBoltDevice)specified).BreakTorque.Joint;
        ShearBolt alike = ShearBolt.Of(own.Thread!, own.Grade!).With(named.PlaneThrough).WithBody(named.BodyStyle);
        bool? likeCut = IsStronger(ShearBoltDevice.Of(bolt.Name, joint.With(alike)), specified, policy);
        return asCut == true || likeCut == true ? true : asCut is null || likeCut is null ? null : false;
    }

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
