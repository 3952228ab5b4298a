using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using static Driveline.Advice.Cause;
using static Driveline.Advice.MarginEffect;

namespace Driveline.Advice;

/// <summary>
/// The remedies the advice knows, by kind: engagement, attitude and work, holes and hub, clutch, the specified part, a stronger bolt.
/// </summary>
/// <remarks>
/// The cure of the likeliest cause comes first, once that cause is known or its fault is seen; then the habits that cost nothing, then the
/// rest by kind, and last a stronger bolt. What the check, run again with it, finds to change nothing is not offered.
/// "Leave it as it is" is said only where its cause comes first and is known, or is computed. A stronger bolt is offered only where every
/// limit is known and the check, run again with it, still says that it guards with a margin of 1 or more.
/// </remarks>
public static class Remedies
{
    /// <summary>Code: a stronger bolt, only with the maker's consent and known limits.</summary>
    public const string StrongerBolt = "remedy.strongerBolt";

    /// <summary>Code: fit the bolt the manual specifies.</summary>
    public const string SpecifiedBolt = "remedy.specifiedBolt";

    /// <summary>Code: engage the PTO slowly at a low engine speed.</summary>
    public const string EngageGently = "remedy.engageGently";

    /// <summary>Code: put holes and faces right.</summary>
    public const string TrueHoles = "remedy.trueHoles";

    /// <summary>Code: free the hub.</summary>
    public const string FreeHub = "remedy.freeHub";

    /// <summary>Code: a bolt whose plain shank lies where it shears.</summary>
    public const string ShankInPlane = "remedy.shankInPlane";

    /// <summary>Code: change the bolt before it tires.</summary>
    public const string ChangeBoltsInTime = "remedy.changeBoltsInTime";

    /// <summary>Code: free the clutch, slip it and set it again.</summary>
    public const string SlipAndReset = "remedy.slipAndReset";

    /// <summary>Code: tighten the clutch springs to what the manual says.</summary>
    public const string SetSpringsAsManual = "remedy.setSpringsAsManual";

    /// <summary>Code: loosen the clutch springs to what the manual says.</summary>
    public const string LoosenSpringsToManual = "remedy.loosenSpringsToManual";

    /// <summary>Code: clutch springs that are not solid when set as the manual says.</summary>
    public const string RightSprings = "remedy.rightSprings";

    internal const string EaseTheWork = "remedy.easeTheWork";
    internal const string TakeLess = "remedy.takeLess";
    internal const string SharpenBlades = "remedy.sharpenBlades";
    internal const string LevelDeck = "remedy.levelDeck";
    internal const string RaiseTheCut = "remedy.raiseTheCut";
    internal const string RenewBlades = "remedy.renewBlades";
    internal const string BalanceRotor = "remedy.balanceRotor";
    internal const string EngageAtLowSpeed = "remedy.engageAtLowSpeed";

    // These say that nothing needs to change; a guess is not enough for that.
    private const string LeaveAsIs = "remedy.leaveAsIs";
    private const string AcceptTrips = "remedy.acceptTrips";

    // A cause must be at least this likely, or its fault be seen, before something is proposed against it.
    private const double WorthARemedy = 0.12;

    private static readonly RemedyEntry[] Entries =
    [
        new(EngageGently, 1, 0, RemedySpending.Nothing, Unchanged, Unchanged, Caution.BystandersAway, AbruptEngagement,
            EngagementSpeedTooHigh),
        new(EngageAtLowSpeed, 1, 0, RemedySpending.Nothing, Unchanged, Unchanged, Caution.BystandersAway, AbruptEngagement,
            EngagementSpeedTooHigh),
        new(LeaveAsIs, 1, 0, RemedySpending.Nothing, Unchanged, Unchanged, Caution.StopAndKeyOut, StrikeTooSoft),
        new(AcceptTrips, 1, 0, RemedySpending.NotKnown, Unchanged, Unchanged, Caution.StrongerIsAChange, WorkJams),
        new("remedy.stopAtOnce", 1, 0, RemedySpending.Nothing, Unchanged, Unchanged, Caution.StopAndKeyOut, TractorTooWeak,
            PtoClutchSlipsFirst),
        new(EaseTheWork, 2, 0, RemedySpending.NotKnown, Raises, Unchanged, Caution.BystandersAway, Overload, TractorTooStrong),
        new(TakeLess, 2, 0, RemedySpending.NotKnown, Raises, Unchanged, Caution.BystandersAway, Overload, TractorTooStrong),
        new(SharpenBlades, 2, 60, RemedySpending.Work, Raises, Unchanged, Caution.BlockRaisedDeck, Overload),
        new(LevelDeck, 2, 30, RemedySpending.Work, Raises, Unchanged, Caution.BlockRaisedDeck, DeckNoseDown),
        new(RaiseTheCut, 2, 10, RemedySpending.Work, Raises, Unchanged, Caution.BlockRaisedDeck, DeckNoseDown),
        new("remedy.limitPower", 2, 0, RemedySpending.NotKnown, Raises, Unchanged, Caution.ManualDecides, TractorTooStrong),
        new(TrueHoles, 3, null, RemedySpending.NotKnown, Raises, Unchanged, Caution.SupportHalfShafts, LooseHoles),
        new("remedy.rightHole", 3, 20, RemedySpending.WorkAndBolt, MarginEffect.NotKnown, MarginEffect.NotKnown, Caution.ManualDecides,
            WrongHole),
        new(FreeHub, 3, 60, RemedySpending.Work, Unchanged, Raises, Caution.JammedDriveSpringsBack, HubSeized),
        new(ShankInPlane, 3, 20, RemedySpending.WorkAndBolt, Raises, Lowers, Caution.ManualDecides, ThreadsInPlane),
        new(ChangeBoltsInTime, 3, 20, RemedySpending.WorkAndBolt, Raises, Unchanged, Caution.ManualDecides, BoltFatigue),
        new("remedy.straightenDriveline", 3, 60, RemedySpending.Work, Raises, Unchanged, Caution.KeepOverlap, JointAngle),
        new(RenewBlades, 3, 90, RemedySpending.WorkAndParts, Raises, Unchanged, Caution.BlockRaisedDeck, RotorUnbalanced),
        new(BalanceRotor, 3, 90, RemedySpending.WorkAndParts, Raises, Unchanged, Caution.StopAndKeyOut, RotorUnbalanced),
        new(SlipAndReset, 4, 60, RemedySpending.Work, Lowers, Raises, Caution.BystandersAway, ClutchStuck),
        new(SetSpringsAsManual, 4, 30, RemedySpending.Work, MarginEffect.NotKnown, MarginEffect.NotKnown, Caution.ManualDecides,
            ClutchSetTooLoose),
        new(LoosenSpringsToManual, 4, 30, RemedySpending.Work, Lowers, Raises, Caution.ManualDecides, ClutchOvertightened),
        new(RightSprings, 4, 60, RemedySpending.WorkAndParts, Lowers, Raises, Caution.ManualDecides, ClutchCoilBound),
        new("remedy.runIn", 4, 30, RemedySpending.Work, Raises, Lowers, Caution.HotClutch, LiningsNotRunIn),
        new("remedy.mendLeak", 4, 120, RemedySpending.WorkAndParts, Raises, Lowers, Caution.StopAndKeyOut, OilLeak),
        new("remedy.renewFacings", 4, 120, RemedySpending.WorkAndParts, Raises, Lowers, Caution.HotClutch, ClutchWorn, ClutchOiled,
            OilLeak),
        new(SpecifiedBolt, 5, 20, RemedySpending.WorkAndBolt, MarginEffect.NotKnown, MarginEffect.NotKnown, Caution.ManualDecides,
            GradeTooSoft, GradeTooStrong, BoltUnmarked, DiameterTooSmall, DiameterTooLarge),
        new("remedy.fitProtection", 5, null, RemedySpending.NotKnown, Lowers, Raises, Caution.ManualDecides, ProtectionMissing),
        new(StrongerBolt, 9, 20, RemedySpending.WorkAndBolt, Raises, Lowers, Caution.StrongerIsAChange, Overload, WorkJams,
            TractorTooStrong),
    ];

    /// <summary>Every remedy's code, in order.</summary>
    public static IReadOnlyList<string> Codes => [.. Entries.Select(e => e.Code)];

    /// <summary>Every cause that a remedy for the cause cures too, itself among them; a stronger bolt is no cure.</summary>
    internal static IReadOnlyList<Cause> Pool(Cause cause, Complaint complaint) =>
    [
        .. Entries.Where(e => e.Code is not (StrongerBolt or LeaveAsIs or AcceptTrips) && MachineFit.Does(e.Code, complaint)
                && Array.IndexOf(e.Causes, cause) >= 0)
            .SelectMany(e => e.Causes).Append(cause).Distinct(),
    ];

    internal static IReadOnlyList<Remedy> For(
        IReadOnlyList<LikelyCause> causes, bool isEnoughKnown, bool isOneKnown, Complaint complaint)
    {
        ProtectionVerdict? verdict = complaint.Model.Verdict;
        double Chance(RemedyEntry entry) =>
            causes.Where(c => (c.Probability.Value >= WorthARemedy || c.IsSeen) && Array.IndexOf(entry.Causes, c.Cause) >= 0)
                .Sum(c => c.Probability.Value);
        Cause? known = causes[0].Cause != Cause.NotKnown && (isEnoughKnown || causes[0].IsSeen) ? causes[0].Cause : null;
        return [.. Entries
            .Where(e => Chance(e) > 0 && MachineFit.Does(e.Code, complaint) && e.Code switch
            {
                StrongerBolt => MayBeStronger(isOneKnown, verdict),
                LeaveAsIs or AcceptTrips => verdict?.Guards is null or Answer.Yes
                    && Array.IndexOf(e.Causes, causes[0].Cause) >= 0 && (isOneKnown || IsComputed(causes[0])),
                _ => true,
            })
            .OrderBy(e => Rank(e, known))
            .ThenBy(e => e.Order)
            .ThenByDescending(Chance)
            .Select(e => new Remedy(e, verdict))
            .Where(r => !r.ChangesNothing)];
    }

    private static int Rank(RemedyEntry entry, Cause? known) => entry.Code == StrongerBolt ? 3
        : known is { } cause && Array.IndexOf(entry.Causes, cause) >= 0 ? 0
        : entry.IsFreeHabit ? 1
        : 2;

    // The numbers of the strike itself say that it was below what makes the protection act.
    private static bool IsComputed(LikelyCause cause) => cause.Because.Any(r => r.Finding.Code == ModelEvidence.StrikeAgainstTrip);

    // A stronger bolt is no remedy where a part's limit is unknown, or where it would leave a part in doubt.
    private static bool MayBeStronger(bool isOneKnown, ProtectionVerdict? verdict) =>
        isOneKnown && verdict is { Guards: Answer.Yes, GuardMargin: > 1 } && verdict.Question.PartsComplete
        && (RemediedCheck.Of(StrongerBolt, verdict) is { Guards: Answer.Yes, GuardMargin: >= 1 }
            || !verdict.Devices.Any(d => d.Device is ShearBoltDevice));
}
