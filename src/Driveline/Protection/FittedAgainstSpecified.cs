using Driveline.Chains;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>What is fitted against what the manual specifies for the same place.</summary>
public sealed class FittedAgainstSpecified
{
    private FittedAgainstSpecified(FittedComparison answer, RatioBand? ratio)
    {
        Answer = answer;
        Ratio = ratio;
    }

    /// <summary>Weaker, the same, or stronger than specified.</summary>
    public FittedComparison Answer { get; }

    /// <summary>Fitted trip over specified trip of two independent specimens; null when not known.</summary>
    public RatioBand? Ratio { get; }

    /// <summary>Compares the two devices as they act when free and in good order: their own strengths, not the state of the hub.</summary>
    internal static FittedAgainstSpecified Compare(ProtectiveDevice? fitted, ProtectiveDevice? specified, ProtectionPolicy policy)
    {
        if (fitted is not { IsIdentified: true, InGoodOrder: { } own } || specified is not { IsIdentified: true, InGoodOrder: { } named })
        {
            return new FittedAgainstSpecified(FittedComparison.NotKnown, null);
        }

        Band f = own.SiBand;
        Band s = named.SiBand;
        if (!s.HasExpected)
        {
            return new FittedAgainstSpecified(f.IsBounded && f.High < s.Low ? FittedComparison.Weaker : FittedComparison.NotKnown, null);
        }

        RatioBand ratio = RatioBand.OfSi(f.Over(s), BandBasis.Combine(own.Basis, named.Basis));
        FittedComparison answer = !f.HasExpected ? f.Low > s.High ? FittedComparison.Stronger : FittedComparison.NotKnown
            : f.Expected > s.Expected * (1 + policy.SameWithin) ? FittedComparison.Stronger
            : f.Expected < s.Expected / (1 + policy.SameWithin) ? FittedComparison.Weaker
            : FittedComparison.Same;
        return new FittedAgainstSpecified(answer, ratio);
    }
}
