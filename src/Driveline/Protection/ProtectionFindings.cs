namespace Driveline.Protection;

/// <summary>Codes of the findings of a protection check. They never change their meaning.</summary>
public static class ProtectionFindings
{
    /// <summary>Some part is damaged below the torque of normal work.</summary>
    public const string NoSettingFits = "protection.noSettingFits";

    /// <summary>There is no protective device in the list.</summary>
    public const string NoDevice = "protection.noDevice";

    /// <summary>A part has no device that limits its torque.</summary>
    public const string PartNotGuarded = "protection.partNotGuarded";

    /// <summary>The device is expected to act only after the part is damaged.</summary>
    public const string TripAboveLimit = "protection.tripAboveLimit";

    /// <summary>Nothing says that the device acts at all before the part is damaged: it is stuck or solid.</summary>
    public const string TripHasNoLimit = "protection.tripHasNoLimit";

    /// <summary>A strong specimen of the device may act only after a weak specimen of the part is damaged.</summary>
    public const string TripMayExceedLimit = "protection.tripMayExceedLimit";

    /// <summary>
    /// A strong specimen of the device may let through more than the part is rated for; what it takes beyond is not known.
    /// </summary>
    public const string TripAboveRating = "protection.tripAboveRating";

    /// <summary>The limit of a part is not known.</summary>
    public const string PartLimitNotKnown = "protection.partLimitNotKnown";

    /// <summary>The limit of a part rests on a default nobody stated.</summary>
    public const string PartLimitAssumed = "protection.partLimitAssumed";

    /// <summary>A rotor or flywheel lies between the device and the part.</summary>
    public const string PartBehindInertia = "protection.partBehindInertia";

    /// <summary>A comparison rests on a gearbox efficiency nobody stated.</summary>
    public const string EfficiencyAssumed = "protection.efficiencyAssumed";

    /// <summary>The speed ratio of a gearbox is not known.</summary>
    public const string GearboxRatioNotKnown = "protection.gearboxRatioNotKnown";

    /// <summary>The list of parts is not stated to be complete.</summary>
    public const string PartsNotComplete = "protection.partsNotComplete";

    /// <summary>A part that this kind of machine must have is not in the list.</summary>
    public const string ExpectedPartMissing = "protection.expectedPartMissing";

    /// <summary>The kind of machine is not known.</summary>
    public const string MachineNotKnown = "protection.machineNotKnown";

    /// <summary>The device is not identified.</summary>
    public const string DeviceNotKnown = "protection.deviceNotKnown";

    /// <summary>Which bolt it is, is known; where it lies, and so its torque, is not.</summary>
    public const string BoltLayoutNotKnown = "protection.boltLayoutNotKnown";

    /// <summary>The torque of normal work is not known.</summary>
    public const string WorkNotKnown = "protection.workNotKnown";

    /// <summary>The torque of normal work rests on a default peak factor.</summary>
    public const string WorkAssumed = "protection.workAssumed";

    /// <summary>The highest torque of normal work has no known bound.</summary>
    public const string WorkUnbounded = "protection.workUnbounded";

    /// <summary>The device is expected to act in normal work.</summary>
    public const string TripBelowWork = "protection.tripBelowWork";

    /// <summary>A weak specimen of the device may act in normal work.</summary>
    public const string TripMayFallBelowWork = "protection.tripMayFallBelowWork";

    /// <summary>Nothing is known below which the device does not act, so it may act in normal work.</summary>
    public const string TripHasNoLowEnd = "protection.tripHasNoLowEnd";

    /// <summary>The device is seen to act in normal work.</summary>
    public const string TripsSeenInWork = "protection.tripsSeenInWork";

    /// <summary>Hours of work with few breaks or none say that it is quiet.</summary>
    public const string QuietByExperience = "protection.quietByExperience";

    /// <summary>By the numbers it acts in normal work, by experience it does not.</summary>
    public const string ExperienceAgainstNumbers = "protection.experienceAgainstNumbers";

    /// <summary>It has acted so often that nobody can call it quiet.</summary>
    public const string BreaksOften = "protection.breaksOften";

    /// <summary>It has acted so often while the PTO was engaged that nobody can call it quiet.</summary>
    public const string BreaksOftenAtEngagement = "protection.breaksOftenAtEngagement";

    /// <summary>The counted hours do not count: something has changed since.</summary>
    public const string HistoryChanged = "protection.historyChanged";

    /// <summary>The counted hours are too few to say that it is quiet.</summary>
    public const string HistoryTooShort = "protection.historyTooShort";

    /// <summary>The counted hours would be enough, if it were stated what opened them and that nothing has changed since.</summary>
    public const string HistoryIncomplete = "protection.historyIncomplete";

    /// <summary>The torque when the PTO is engaged is not known.</summary>
    public const string EngagementNotKnown = "protection.engagementNotKnown";

    /// <summary>Engaging the PTO may reach the trip torque.</summary>
    public const string EngagementMayTrip = "protection.engagementMayTrip";

    /// <summary>The peak of engaging the PTO, stated or simulated, is expected to make the device act.</summary>
    public const string EngagementTrips = "protection.engagementTrips";

    /// <summary>The tractor's PTO clutch slips before the weakest device of this kind acts.</summary>
    public const string PtoClutchFirst = "protection.ptoClutchFirst";

    /// <summary>The engine stalls before the weakest device of this kind acts.</summary>
    public const string EngineStallsFirst = "protection.engineStallsFirst";

    /// <summary>Even the lowest work peak is above all that the PTO clutch passes: one of the two is wrong.</summary>
    public const string WorkAboveClutch = "protection.workAboveClutch";

    /// <summary>Even the lowest mean torque of work is above the engine's highest: one of the two is wrong.</summary>
    public const string MeanAboveEngine = "protection.meanAboveEngine";

    /// <summary>Engaging the PTO may slip the clutch, which is its job and within the limits of its linings.</summary>
    public const string EngagementSlipsClutch = "protection.engagementSlipsClutch";

    /// <summary>One of several devices is expected to act first.</summary>
    public const string ActsFirst = "protection.actsFirst";

    /// <summary>One of several devices is expected to act first, but another may.</summary>
    public const string MayActFirst = "protection.mayActFirst";

    /// <summary>Nobody can say which of several devices acts first.</summary>
    public const string FirstNotKnown = "protection.firstNotKnown";

    /// <summary>What is fitted acts later than what the manual specifies.</summary>
    public const string FittedStronger = "protection.fittedStronger";

    /// <summary>What is fitted acts earlier than what the manual specifies.</summary>
    public const string FittedWeaker = "protection.fittedWeaker";

    /// <summary>What is fitted is of a higher grade or thicker than what the manual names, though it acts no later.</summary>
    public const string FittedHigherOrThicker = "protection.fittedHigherOrThicker";

    /// <summary>What the manual specifies is not known.</summary>
    public const string SpecifiedNotKnown = "protection.specifiedNotKnown";

    /// <summary>Repeated work peaks may tire the bolt after a number of hours.</summary>
    public const string BoltMayTire = "protection.boltMayTire";

    /// <summary>The trip torque of this device scatters widely; a better-bounded grade would scatter less.</summary>
    public const string TripScattersWidely = "protection.tripScattersWidely";
}
