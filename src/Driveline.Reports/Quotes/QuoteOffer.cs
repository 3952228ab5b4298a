using Driveline.Choosing;
using Driveline.Protection;

namespace Driveline.Reports.Quotes;

/// <summary>Which bolts of a choice may be quoted: no stronger than the manual's, with room on both sides.</summary>
internal sealed class QuoteOffer
{
    public QuoteOffer(BoltChoice choice, string? sku)
    {
        RankedBolt[] permitted = [.. choice.Choices.Where(IsPermitted)];
        Chosen = sku is null ? permitted.OrderBy(b => b.IsSpecified ? 0 : 1).FirstOrDefault()
            : permitted.FirstOrDefault(b => b.Item.Sku == sku);
        Others = [.. permitted.Where(b => b != Chosen)];
        NotPermitted = [.. choice.Choices.Where(b => !IsPermitted(b))];
    }

    public RankedBolt? Chosen { get; }

    public IReadOnlyList<RankedBolt> Others { get; }

    public IReadOnlyList<RankedBolt> NotPermitted { get; }

    private static bool IsPermitted(RankedBolt bolt) => bolt is { LeavesRoom: true, IsStrongerThanSpecified: false, GuardMargin: > 1 }
        && bolt.Verdict is { Guards: not Answer.No, Standing.State: not StandingState.Stop };
}
