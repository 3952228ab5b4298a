using Driveline.Findings;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Choosing;

/// <summary>
/// What would help when no bolt fits, mildest first: engagement, power, hub, position, radius, another part. Numbers are computed, not
/// guessed.
/// </summary>
/// <remarks>
/// With work margin w and guard margin g of a bolt: a place that scales its torque by k has margins w·k and g/k, so a k exists only
/// where w·g exceeds the product of the margins asked for. Less work raises w, a stronger part raises g, each by what is short of that.
/// </remarks>
internal static class BoltChanges
{
    public static IReadOnlyList<Finding> Of(BoltSearch search)
    {
        var changes = new List<Finding>();
        RankedBolt[] bolts = [.. search.Fitting.Where(IsMeant).OrderBy(b => b, BoltOrder.BestFirst)];
        if (bolts.Length > 0 && EngagementChange.Of(search.Question, bolts[0].Verdict) is { } gentle)
        {
            changes.Add(gentle);
        }

        if (search.Joint.Hub != HubState.Free && bolts.All(b => b.GuardMargin == 0))
        {
            // Without a free hub no number below means anything.
            changes.Add(Finding.Of(ChoosingFindings.ChangeHub, Severity.Warning));
            return changes;
        }

        RankedBolt[] bounded = [.. bolts.Where(b => b.GuardMargin > 0)];
        if (bounded.Length == 0 || !LimitKnowledge.IsComplete(search.AsFitted))
        {
            return changes;
        }

        AddPower(search, bounded, changes);
        if (PositionChange.Of(search) is { } position)
        {
            changes.Add(position);
        }

        if (RadiusChange.Of(search) is { } radius)
        {
            changes.Add(radius);
        }

        AddPart(search, bounded, changes);
        return changes;
    }

    // The bolt that guards and comes nearest to quiet; else, at the best place, the bolt whose bands lie closest together.
    private static void AddPower(BoltSearch search, RankedBolt[] bolts, List<Finding> changes)
    {
        ProtectionPolicy policy = search.Terms.Policy;
        RankedBolt? guarding = bolts.Where(b => b.GuardMargin > policy.MinimumGuardMargin).OrderByDescending(b => b.WorkMargin)
            .FirstOrDefault();
        RankedBolt bolt = guarding ?? Closest(bolts);
        double share = guarding is not null ? bolt.WorkMargin!.Value / policy.MinimumWorkMargin : ProductShare(bolt, policy);
        if (share < 1 && search.Question.Work!.Torque is { IsBounded: true } work)
        {
            changes.Add(Finding.Of(ChoosingFindings.ChangePower, Severity.Note)
                .With("bolt", bolt.Item.Name)
                .With("place", PlaceOf(guarding))
                .With("now", QuantityKind.Torque, work.SiBand.High)
                .With("below", QuantityKind.Torque, work.SiBand.High * share)
                .With("percent", QuantityKind.Number, share * 100));
        }
    }

    private static void AddPart(BoltSearch search, RankedBolt[] bolts, List<Finding> changes)
    {
        ProtectionPolicy policy = search.Terms.Policy;
        RankedBolt? quiet = bolts.Where(b => b.WorkMargin > policy.MinimumWorkMargin).OrderByDescending(b => b.GuardMargin)
            .FirstOrDefault();
        RankedBolt bolt = quiet ?? Closest(bolts);

        // A bolt moved to be just quiet asks of every part so much more.
        double factor = policy.MinimumGuardMargin * (quiet is not null ? 1 : policy.MinimumWorkMargin / bolt.WorkMargin!.Value);
        foreach (PartCheck part in bolt.Verdict.Parts.Where(p => p.Margin < factor))
        {
            changes.Add(Finding.Of(ChoosingFindings.ChangePart, Severity.Note)
                .With("bolt", bolt.Item.Name)
                .With("place", PlaceOf(quiet))
                .With("name", part.Part.Name)
                .With("now", QuantityKind.Torque, part.Part.Limit!.DamagedAt.SiBand.Low)
                .With("above", QuantityKind.Torque, part.Acts.High * factor));
        }
    }

    // A change is worked out for bolts that could stay: none that is loose, none stronger than the manual's.
    private static bool IsMeant(RankedBolt bolt) =>
        bolt is { IsLoose: false, WorkMargin: > 0, GuardMargin: not null } && bolt.IsStrongerThanSpecified != true;

    private static string PlaceOf(RankedBolt? asItIs) => asItIs is null ? "best" : "asIs";

    private static RankedBolt Closest(RankedBolt[] bolts) => bolts.OrderByDescending(b => b.WorkMargin * b.GuardMargin).First();

    private static double ProductShare(RankedBolt bolt, ProtectionPolicy policy) =>
        bolt.WorkMargin!.Value * bolt.GuardMargin!.Value / (policy.MinimumWorkMargin * policy.MinimumGuardMargin);
}
