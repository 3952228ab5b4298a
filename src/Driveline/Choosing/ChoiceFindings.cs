using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Choosing;

/// <summary>What a choice of bolts reports, worst first.</summary>
internal static class ChoiceFindings
{
    public static IReadOnlyList<Finding> WithoutJoint(ProtectionVerdict asFitted)
    {
        bool isWithoutBolt = asFitted.Devices.Count > 0
            && asFitted.Devices.All(d => d.Device.Kind is DeviceKind.SlipClutch or DeviceKind.CutOut);
        Finding none = isWithoutBolt ? Finding.Of(ChoosingFindings.NoBolt, Severity.Note)
            : Finding.Of(ChoosingFindings.NoKnownJoint, Severity.Warning);
        return LimitKnowledge.IsAnyKnown(asFitted) ? [none] : [Finding.Of(ChoosingFindings.LimitsNotKnown, Severity.Danger), none];
    }

    public static IReadOnlyList<Finding> Of(BoltSearch search, RankedBolt? manuals, IReadOnlyList<RankedBolt> offered)
    {
        var findings = new List<Finding>();
        AddLimits(search, search.Fitting.Count(b => !b.IsLoose && !b.HasNoUpperEnd && !search.MayOffer(b)), findings);
        if (search.Fitting.Count == 0)
        {
            findings.Add(Finding.Of(ChoosingFindings.NoneInHole, Severity.Warning)
                .With("diameter", QuantityKind.Length, Si.Meters(search.Terms.Holes.Present ?? search.MadeFor.Diameter)));
        }

        AddSpecified(search, manuals, findings);
        if (search.Question.Work is null)
        {
            findings.Add(Finding.Of(ChoosingFindings.RankedByGuardAlone, Severity.Warning));
        }
        else if (LimitKnowledge.IsAnyKnown(search.AsFitted))
        {
            AddFit(search, offered, findings);
        }

        AddSmaller(search, offered, findings);
        return [.. findings.OrderBy(f => f.Severity)];
    }

    private static void AddLimits(BoltSearch search, int withheld, List<Finding> findings)
    {
        if (!LimitKnowledge.IsAnyKnown(search.AsFitted))
        {
            findings.Add(Finding.Of(ChoosingFindings.LimitsNotKnown, Severity.Danger));
        }
        else if (withheld > 0)
        {
            findings.Add(Withheld(search.AsFitted).With("count", QuantityKind.Count, withheld));
        }
    }

    private static Finding Withheld(ProtectionVerdict asFitted) => LimitKnowledge.FirstUnknownPart(asFitted) is { } unknown
        ? Finding.Of(ChoosingFindings.StrongerWithheldByPart, Severity.Danger).With("name", unknown)
        : Finding.Of(LimitKnowledge.IsListComplete(asFitted) ? ChoosingFindings.StrongerWithheldByTrip
            : ChoosingFindings.StrongerWithheldByList, Severity.Danger);

    // What the manual names comes before anything computed.
    private static void AddSpecified(BoltSearch search, RankedBolt? manuals, List<Finding> findings)
    {
        if (search.Specified is not { } specified)
        {
            findings.Add(Finding.Of(ChoosingFindings.ManualsNotStated, Severity.Warning));
            return;
        }

        if (manuals is not null && search.IsInStock(manuals.Item) == false)
        {
            findings.Add(Finding.Of(ChoosingFindings.ManualsNotInStock, Severity.Warning).With("bolt", manuals.Item.Name));
        }

        FittedComparison answer = FittedAgainstSpecified.Compare(search.Place, specified, search.Terms.Policy).Answer;
        if (answer != FittedComparison.Same)
        {
            string bolt = specified is Chains.ShearBoltDevice { BreakTorque.Joint.Bolt: { } named } ? named.ToString() : specified.Name;
            findings.Add(
                Finding.Of(ChoosingFindings.SpecifiedFirst, answer == FittedComparison.Stronger ? Severity.Danger : Severity.Warning)
                .With("bolt", bolt));
        }
    }

    private static void AddFit(BoltSearch search, IReadOnlyList<RankedBolt> offered, List<Finding> findings)
    {
        if (offered.FirstOrDefault(b => b.LeavesRoom && b.IsStrongerThanSpecified == false) is { } best)
        {
            if (EngagementChange.Of(search.Question, best.Verdict) is { } gentle)
            {
                findings.Add(gentle);
            }

            return;
        }

        RankedBolt? nearest = offered.FirstOrDefault(b => b.IsStrongerThanSpecified != true);
        if (offered.Any(b => b.LeavesRoom))
        {
            findings.Add(Finding.Of(ChoosingFindings.RoomNeedsConsent, Severity.Warning));
        }
        else if (offered.Count > 0 && offered.All(b => b.GuardMargin == 0))
        {
            findings.Add(Finding.Of(ChoosingFindings.NothingGuards, Severity.Danger).With("count", QuantityKind.Count, offered.Count));
        }
        else if (nearest is { WorkMargin: > 0 and { } work, GuardMargin: > 0 and { } guard })
        {
            findings.Add(Finding.Of(ChoosingFindings.NothingFits, Severity.Warning)
                .With("count", QuantityKind.Count, offered.Count)
                .With("bolt", nearest.Item.Name)
                .With("workMargin", QuantityKind.Margin, work)
                .With("guardMargin", QuantityKind.Margin, guard));
        }

        findings.AddRange(BoltChanges.Of(search));
    }

    private static void AddSmaller(BoltSearch search, IReadOnlyList<RankedBolt> offered, List<Finding> findings)
    {
        RankedBolt? inHole = offered.FirstOrDefault(b => !b.NeedsRedrilling && b.IsStrongerThanSpecified != true);
        if (inHole is not { WorseMargin: { } worse, WorkMargin: not null })
        {
            return;
        }

        RankedBolt? smaller = search.AnySize()
            .Where(b => b.Item.Bolt.DiameterM < inHole.Item.Bolt.DiameterM - 1e-6 && b.Scatter < inHole.Scatter && b.WorseMargin > worse
                && b.GuardMargin >= 1 && b.IsStrongerThanSpecified != true)
            .Where(search.MayOffer)
            .OrderBy(b => b, BoltOrder.BestFirst)
            .FirstOrDefault();
        if (smaller is { WorkMargin: > 0 and { } work, GuardMargin: { } guard })
        {
            findings.Add(Finding.Of(ChoosingFindings.SmallerBetterBounded, Severity.Note)
                .With("bolt", smaller.Item.Name)
                .With("than", inHole.Item.Name)
                .With("scatter", QuantityKind.Number, smaller.Scatter)
                .With("thanScatter", QuantityKind.Number, inHole.Scatter)
                .With("workMargin", QuantityKind.Margin, work)
                .With("guardMargin", QuantityKind.Margin, guard));
        }
    }
}
