using Driveline.Chains;
using Driveline.Protection;
using static Driveline.Advice.Cause;
using static Driveline.Advice.MarginEffect;

namespace Driveline.Advice;

/// <summary>The remedies the advice knows, in order: engagement, attitude and work, holes and hub, clutch, the specified part, and last a stronger bolt.</summary>
public static class Remedies
{
    /// <summary>Code: a stronger bolt, only with the maker's consent and known limits.</summary>
    public const string StrongerBolt = "remedy.strongerBolt";

    /// <summary>Code: fit the bolt the manual specifies.</summary>
    public const string SpecifiedBolt = "remedy.specifiedBolt";

    // A cause must be at least this likely, or its fault be seen, before something is proposed against it.
    private const double WorthARemedy = 0.12;

    private static readonly RemedyEntry[] Entries =
    [
        new("engageGently", 1, 0, Raises, Unchanged, Cautions.StopAndKeyOut, AbruptEngagement, EngagementSpeedTooHigh),
        new("leaveAsIs", 1, 0, Unchanged, Unchanged, Cautions.StopAndKeyOut, StrikeTooSoft),
        new("acceptTrips", 1, 0, Unchanged, Unchanged, Cautions.StrongerIsAChange, WorkJams),
        new("easeTheWork", 2, 0, Raises, Unchanged, Cautions.ThrownObjects, Overload, TractorTooStrong),
        new("sharpenBlades", 2, 60, Raises, Unchanged, Cautions.BlockRaisedDeck, Overload),
        new("levelDeck", 2, 30, Raises, Unchanged, Cautions.BlockRaisedDeck, DeckNoseDown),
        new("raiseTheCut", 2, 10, Raises, Unchanged, Cautions.BlockRaisedDeck, DeckNoseDown),
        new("limitPower", 2, 0, Raises, Unchanged, Cautions.ManualDecides, TractorTooStrong),
        new("trueHoles", 3, null, Raises, Unchanged, Cautions.SupportHalfShafts, LooseHoles),
        new("freeHub", 3, 60, Unchanged, Raises, Cautions.JammedDriveSpringsBack, HubSeized),
        new("shankInPlane", 3, 20, Raises, Lowers, Cautions.ManualDecides, ThreadsInPlane),
        new("changeBoltsInTime", 3, 20, Raises, Unchanged, Cautions.ManualDecides, BoltFatigue),
        new("straightenDriveline", 3, 60, Raises, Unchanged, Cautions.KeepOverlap, JointAngle),
        new("renewBlades", 3, 90, Raises, Unchanged, Cautions.BlockRaisedDeck, RotorUnbalanced),
        new("slipAndReset", 4, 60, Lowers, Raises, Cautions.HotClutch, ClutchStuck),
        new("setSpringsAsManual", 4, 30, MarginEffect.NotKnown, MarginEffect.NotKnown, Cautions.ManualDecides, ClutchSetTooLoose),
        new("loosenSpringsToManual", 4, 30, Lowers, Raises, Cautions.ManualDecides, ClutchOvertightened),
        new("rightSprings", 4, 60, Lowers, Raises, Cautions.ManualDecides, ClutchCoilBound),
        new("renewFacings", 4, 120, Raises, Lowers, Cautions.HotClutch, ClutchWorn, ClutchOiled),
        new("specifiedBolt", 5, 20, MarginEffect.NotKnown, MarginEffect.NotKnown, Cautions.ManualDecides, GradeTooSoft, GradeTooStrong, BoltUnmarked, DiameterTooSmall, DiameterTooLarge),
        new("fitProtection", 5, null, Lowers, Raises, Cautions.ManualDecides, ProtectionMissing),
        new("strongerBolt", 9, 20, Raises, Lowers, Cautions.StrongerIsAChange, Overload, WorkJams, TractorTooStrong),
    ];

    /// <summary>Every remedy's code, in order.</summary>
    public static IReadOnlyList<string> Codes => [.. Entries.Select(e => e.Code)];

    internal static IReadOnlyList<Remedy> For(IReadOnlyList<LikelyCause> causes, bool isEnoughKnown, ProtectionVerdict? verdict)
    {
        double Chance(RemedyEntry entry) =>
            causes.Where(c => (c.Probability.Value >= WorthARemedy || c.IsSeen) && Array.IndexOf(entry.Causes, c.Cause) >= 0).Sum(c => c.Probability.Value);
        return [.. Entries
            .Where(e => Chance(e) > 0 && (e.Code != StrongerBolt || MayBeStronger(isEnoughKnown, verdict)))
            .OrderBy(e => e.Order)
            .ThenByDescending(Chance)
            .Select(e => WithMargins(e, verdict))];
    }

    // A stronger bolt is no remedy where a part's limit is unknown or where it would leave the guard in doubt already.
    private static bool MayBeStronger(bool isEnoughKnown, ProtectionVerdict? verdict) =>
        isEnoughKnown && verdict is { Guards: Answer.Yes, GuardMargin: > 1 } && verdict.Question.PartsComplete;

    private static Remedy WithMargins(RemedyEntry entry, ProtectionVerdict? verdict)
    {
        if (verdict is null)
        {
            return new Remedy(entry, null, null);
        }

        if (entry.Code == SpecifiedBolt)
        {
            ProtectionVerdict? after = WithSpecified(verdict);
            return new Remedy(entry, after?.WorkMargin, after?.GuardMargin);
        }

        return new Remedy(
            entry,
            entry.OnWork == Unchanged ? verdict.WorkMargin : null,
            entry.OnGuard == Unchanged ? verdict.GuardMargin : null);
    }

    private static ProtectionVerdict? WithSpecified(ProtectionVerdict verdict)
    {
        if (verdict.Question.Specified is not { } specified || verdict.Devices.Count == 0)
        {
            return null;
        }

        DrivelineChain chain = verdict.Question.Chain.With(verdict.Devices[0].Device, specified);
        return ProtectionCheck.Run(verdict.Question.WithChain(chain).WithTripsInNormalWork(false), verdict.Policy);
    }
}
