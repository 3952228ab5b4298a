using Driveline.Chains;
using Driveline.Findings;

namespace Driveline.Choosing;

/// <summary>
/// The same kind of joint on the other side of a gearbox, where the torque is another: the best bolt of the stock that fits there.
/// </summary>
/// <remarks>
/// Only a device of the main line is moved; one in a branch stays there. The moved joint has a new hole of the bolt's size.
/// </remarks>
internal static class PositionChange
{
    public static Finding? Of(BoltSearch search)
    {
        RankedBolt? best = null;
        string name = string.Empty;
        bool isBehind = false;
        List<Element> rest = [.. search.Question.Chain.Elements.Where(e => !ReferenceEquals(e, search.Place))];
        if (rest.Count == search.Question.Chain.Elements.Count)
        {
            return null;
        }

        int from = search.Question.Chain.Elements.ToList().IndexOf(search.Place);
        for (int g = 0; g < rest.Count; g++)
        {
            if (rest[g] is not Part { Kind: PartKind.Gearbox })
            {
                continue;
            }

            bool behind = from <= g;
            var moved = new List<Element>(rest);
            moved.Insert(behind ? g + 1 : g, search.Place);
            RankedBolt? there = Best(search, DrivelineChain.Of([.. moved]));
            if (there is not null && (best is null || BoltOrder.BestFirst.Compare(there, best) < 0))
            {
                best = there;
                name = rest[g].Name;
                isBehind = behind;
            }
        }

        return best is not { WorkMargin: { } work, GuardMargin: { } guard } ? null
            : Finding.Of(isBehind ? ChoosingFindings.ChangePositionBehind : ChoosingFindings.ChangePositionBefore, Severity.Note)
                .With("bolt", best.Item.Name)
                .With("name", name)
                .With("workMargin", QuantityKind.Margin, work)
                .With("guardMargin", QuantityKind.Margin, guard);
    }

    private static RankedBolt? Best(BoltSearch search, DrivelineChain moved) => search.Terms.Stock.Items
        .Where(i => BoltSearch.IsSlender(i, search.Joint))
        .Select(i => search.In(moved, search.Place, search.Joint, i, HoleUse.Own(i)))
        .Where(b => b.LeavesRoom && LimitKnowledge.IsComplete(b.Verdict))
        .OrderBy(b => b, BoltOrder.BestFirst)
        .FirstOrDefault();
}
