using Driveline.Findings;

namespace Driveline.Choosing;

/// <summary>Which bolts of the stock are left out of the ranking, and why.</summary>
internal static class LeftOutBolts
{
    public static IReadOnlyList<LeftOut> Of(BoltSearch search)
    {
        var fitting = search.Fitting.ToDictionary(b => b.Item);
        var leftOut = new List<LeftOut>();
        foreach (StockItem item in search.Terms.Stock.Items)
        {
            RankedBolt? bolt = fitting.TryGetValue(item, out RankedBolt? known) ? known : null;
            if (Reason(search, item, bolt) is { } reason)
            {
                leftOut.Add(new LeftOut(item, reason.With("bolt", item.Sku is null ? item.Name : item.Name + " (" + item.Sku + ")")));
            }
        }

        return leftOut.AsReadOnly();
    }

    private static Finding? Reason(BoltSearch search, StockItem item, RankedBolt? bolt)
    {
        if (bolt is null)
        {
            return Finding.Of(ChoosingFindings.LeftOutHole, Severity.Note);
        }

        if (bolt.IsLoose)
        {
            return Finding.Of(ChoosingFindings.LeftOutLoose, Severity.Note)
                .With("diameter", QuantityKind.Length, search.Terms.Holes.WidestM(bolt, search.MadeFor))
                .With("normal", QuantityKind.Length, item.Bolt.NormalHoleM);
        }

        return search.MayOffer(bolt) ? null
            : Finding.Of(!LimitKnowledge.IsAnyKnown(bolt.Verdict) ? ChoosingFindings.LeftOutLimitsNotKnown
                : bolt.HasNoUpperEnd ? ChoosingFindings.LeftOutNoUpperEnd
                : ChoosingFindings.LeftOutMayBeStronger, Severity.Note);
    }
}
