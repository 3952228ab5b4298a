namespace Driveline.Protection;

/// <summary>Codes of the reasons for a standing; the text of what lifts one has the same code with ".lift" behind it.</summary>
public static class StandingFindings
{
    /// <summary>The clutch smokes.</summary>
    public const string ClutchSmokes = "standing.clutchSmokes";

    /// <summary>Nothing is fitted that would give.</summary>
    public const string NoDevice = "standing.noDevice";

    /// <summary>The hub does not turn on its shaft.</summary>
    public const string HubSeized = "standing.hubSeized";

    /// <summary>The hub turns stiffly.</summary>
    public const string HubStiff = "standing.hubStiff";

    /// <summary>The clutch is stuck.</summary>
    public const string ClutchStuck = "standing.clutchStuck";

    /// <summary>The clutch's springs are solid.</summary>
    public const string ClutchSolid = "standing.clutchSolid";

    /// <summary>The clutch gets too hot in work.</summary>
    public const string ClutchOverheats = "standing.clutchOverheats";

    /// <summary>The driveline's tube is twisted.</summary>
    public const string TubeTwisted = "standing.tubeTwisted";

    /// <summary>The gearbox is broken.</summary>
    public const string GearboxBroken = "standing.gearboxBroken";

    /// <summary>A blade is bent or unequal.</summary>
    public const string BladesBent = "standing.bladesBent";

    /// <summary>The work itself is heavier than a part can take.</summary>
    public const string WorkTooHeavy = "standing.workTooHeavy";

    /// <summary>By the numbers a part breaks before the protection gives.</summary>
    public const string DoesNotProtect = "standing.doesNotProtect";

    /// <summary>What is fitted is stronger than the manual specifies.</summary>
    public const string FittedStronger = "standing.fittedStronger";

    /// <summary>The likeliest cause leaves no protection, though nobody has looked yet.</summary>
    public const string LikelyUnprotected = "standing.likelyUnprotected";

    /// <summary>Nobody can say whether anything gives before a part breaks.</summary>
    public const string GuardsNotKnown = "standing.guardsNotKnown";

    /// <summary>The protection may not act in time.</summary>
    public const string MayNotProtect = "standing.mayNotProtect";

    /// <summary>After a blow nothing may run before it has been inspected.</summary>
    public const string InspectFirst = "standing.inspectFirst";

    /// <summary>It acts in normal work.</summary>
    public const string ActsInWork = "standing.actsInWork";

    /// <summary>It may act in normal work.</summary>
    public const string MayActInWork = "standing.mayActInWork";

    /// <summary>Dangers are listed beside the answer.</summary>
    public const string Dangers = "standing.dangers";

    /// <summary>What the manual specifies is not known.</summary>
    public const string SpecifiedNotKnown = "standing.specifiedNotKnown";

    /// <summary>What the manual specifies is known; whether what is fitted is that, is not.</summary>
    public const string FittedNotKnown = "standing.fittedNotKnown";

    /// <summary>A bolt stands out of a hub that turns in the open, where people are beside it.</summary>
    public const string BoltStandsProud = "standing.boltStandsProud";

    /// <summary>Nobody has said that tube, gearbox and blades are sound.</summary>
    public const string NotLookedOver = "standing.notLookedOver";

    /// <summary>The owner complains of something.</summary>
    public const string Complaint = "standing.complaint";
}
