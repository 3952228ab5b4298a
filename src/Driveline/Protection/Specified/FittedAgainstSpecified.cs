using Driveline.Chains;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>What is fitted against what the manual specifies for the same place.</summary>
/// <remarks>
/// Two plain bolts are also compared with both cut where the manual's is: a bolt of higher grade or greater size is stronger than
/// specified, however weak it is only because its thread lies in the shear plane. The ratio is then that of like planes.
/// </remarks>
public sealed class FittedAgainstSpecified
{
    private FittedAgainstSpecified(ProtectiveDevice? device, ProtectiveDevice? specified, FittedComparison answer, RatioBand? ratio)
    {
        Device = device;
        Specified = specified;
        Answer = answer;
        Ratio = ratio;
    }

    /// <summary>The fitted device; null when there is none.</summary>
    public ProtectiveDevice? Device { get; }

    /// <summary>What the manual specifies in its place; null when not known.</summary>
    public ProtectiveDevice? Specified { get; }

    /// <summary>Weaker, the same, or stronger than specified.</summary>
    public FittedComparison Answer { get; }

    /// <summary>Fitted trip over specified trip of two independent pieces; null when not known.</summary>
    public RatioBand? Ratio { get; }

    /// <summary>The answer, and the torque fitted over the torque specified.</summary>
    public override string ToString() => Answer + (Ratio is null ? string.Empty : ", ratio " + Ratio);

    /// <summary>One comparison for each device of a question, in order from the tractor.</summary>
    internal static IReadOnlyList<FittedAgainstSpecified> Each(ProtectionQuestion question, ProtectionPolicy policy)
    {
        IReadOnlyList<ProtectiveDevice> devices = question.Chain.Devices;
        var each = new FittedAgainstSpecified[devices.Count];
        for (int k = 0; k < each.Length; k++)
        {
            each[k] = Compare(devices[k], question.SpecifiedFor(devices[k]), policy);
        }

        return Array.AsReadOnly(each);
    }

    /// <summary>The worst of them: stronger, then weaker, then not known, then the same.</summary>
    internal static FittedAgainstSpecified Worst(IReadOnlyList<FittedAgainstSpecified> all)
    {
        FittedAgainstSpecified? worst = null;
        for (int k = 0; k < all.Count; k++)
        {
            worst = worst is null || Rank(all[k].Answer) < Rank(worst.Answer) ? all[k] : worst;
        }

        return worst ?? new FittedAgainstSpecified(null, null, FittedComparison.NotKnown, null);
    }

    private static int Rank(FittedComparison answer) => answer switch
    {
        FittedComparison.Stronger => 0,
        FittedComparison.Weaker => 1,
        FittedComparison.NotKnown => 2,
        _ => 3,
    };

    /// <summary>Compares the two devices as they act when free and in good order: their own strengths, not the state of the hub.</summary>
    internal static FittedAgainstSpecified Compare(ProtectiveDevice? fitted, ProtectiveDevice? specified, ProtectionPolicy policy)
    {
        FittedAgainstSpecified asTheyAre = AsTheyAre(fitted, fitted, specified, policy);
        return InPlaneOf(fitted, specified) is { } like
            && AsTheyAre(fitted, like, specified, policy) is { Answer: FittedComparison.Stronger } stronger ? stronger : asTheyAre;
    }

    private static FittedAgainstSpecified AsTheyAre(
        ProtectiveDevice? device, ProtectiveDevice? fitted, ProtectiveDevice? specified, ProtectionPolicy policy)
    {
        if (fitted is not { IsIdentified: true, InGoodOrder: { } own } || specified is not { IsIdentified: true, InGoodOrder: { } named })
        {
            return new FittedAgainstSpecified(device, specified, FittedComparison.NotKnown, null);
        }

        Band f = own.SiBand;
        Band s = named.SiBand;
        if (!s.HasExpected)
        {
            return new FittedAgainstSpecified(
                device, specified, f.IsBounded && f.High < s.Low ? FittedComparison.Weaker : FittedComparison.NotKnown, null);
        }

        RatioBand ratio = RatioBand.OfSi(f.Over(s), BandBasis.Combine(own.Basis, named.Basis));
        FittedComparison answer = !f.HasExpected ? f.Low > s.High ? FittedComparison.Stronger : FittedComparison.NotKnown
            : f.Expected > s.Expected * (1 + policy.SameWithin) ? FittedComparison.Stronger
            : f.Expected < s.Expected / (1 + policy.SameWithin) ? FittedComparison.Weaker
            : FittedComparison.Same;
        return new FittedAgainstSpecified(device, specified, answer, ratio);
    }

    // The fitted bolt cut where the specified one is; null when the planes are alike or either bolt is not plain.
    private static ShearBoltDevice? InPlaneOf(ProtectiveDevice? fitted, ProtectiveDevice? specified)
    {
        if (fitted is not ShearBoltDevice { BreakTorque.Joint: { } joint }
            || specified is not ShearBoltDevice { BreakTorque.Joint.Bolt: { } manual })
        {
            return null;
        }

        bool isPlain = joint.Bolt is { NeedsNeck: false, Thread: not null } && manual is { NeedsNeck: false, Thread: not null };
        return isPlain && joint.Bolt.PlaneThrough != manual.PlaneThrough
            && (manual.PlaneThrough is PlaneThrough.Shank or PlaneThrough.Thread)
            ? ShearBoltDevice.Of(fitted.Name, joint.With(joint.Bolt.With(manual.PlaneThrough)))
            : null;
    }
}
