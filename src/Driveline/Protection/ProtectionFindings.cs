namespace Driveline.Protection;

/// <summary>Codes of the findings of a protection check. They never change their meaning.</summary>
public static class ProtectionFindings
{
    /// <summary>Some part is damaged below the torque of normal work.</summary>
    public const string NoSettingFits = "noSettingFits";

    /// <summary>There is no protective device in the list.</summary>
    public const string NoDevice = "noDevice";

    /// <summary>A part has no device that limits its torque.</summary>
    public const string PartNotGuarded = "partNotGuarded";

    /// <summary>The device is expected to act only after the part is damaged.</summary>
    public const string TripAboveLimit = "tripAboveLimit";

    /// <summary>Nothing says that the device acts at all before the part is damaged: it is stuck or solid.</summary>
    public const string TripHasNoLimit = "tripHasNoLimit";

    /// <summary>A strong specimen of the device may act only after a weak specimen of the part is damaged.</summary>
    public const string TripMayExceedLimit = "tripMayExceedLimit";

    /// <summary>The limit of a part is not known.</summary>
    public const string PartLimitNotKnown = "partLimitNotKnown";

    /// <summary>The limit of a part rests on a default nobody stated.</summary>
    public const string PartLimitAssumed = "partLimitAssumed";

    /// <summary>A rotor or flywheel lies between the device and the part.</summary>
    public const string PartBehindInertia = "partBehindInertia";

    /// <summary>A comparison rests on a gearbox efficiency nobody stated.</summary>
    public const string EfficiencyAssumed = "efficiencyAssumed";

    /// <summary>The speed ratio of a gearbox is not known.</summary>
    public const string GearboxRatioNotKnown = "gearboxRatioNotKnown";

    /// <summary>The list of parts is not stated to be complete.</summary>
    public const string PartsNotComplete = "partsNotComplete";

    /// <summary>A part that this kind of machine must have is not in the list.</summary>
    public const string ExpectedPartMissing = "expectedPartMissing";

    /// <summary>The kind of machine is not known.</summary>
    public const string MachineNotKnown = "machineNotKnown";

    /// <summary>The device is not identified.</summary>
    public const string DeviceNotKnown = "deviceNotKnown";

    /// <summary>The torque of normal work is not known.</summary>
    public const string WorkNotKnown = "workNotKnown";

    /// <summary>The torque of normal work rests on a default peak factor.</summary>
    public const string WorkAssumed = "workAssumed";

    /// <summary>The highest torque of normal work has no known bound.</summary>
    public const string WorkUnbounded = "workUnbounded";

    /// <summary>The device is expected to act in normal work.</summary>
    public const string TripBelowWork = "tripBelowWork";

    /// <summary>A weak specimen of the device may act in normal work.</summary>
    public const string TripMayFallBelowWork = "tripMayFallBelowWork";

    /// <summary>The device is seen to act in normal work.</summary>
    public const string TripsSeenInWork = "tripsSeenInWork";

    /// <summary>The torque when the PTO is engaged is not known.</summary>
    public const string EngagementNotKnown = "engagementNotKnown";

    /// <summary>Engaging the PTO may reach the trip torque.</summary>
    public const string EngagementMayTrip = "engagementMayTrip";

    /// <summary>Engaging the PTO may slip the clutch, which is its job and within the limits of its linings.</summary>
    public const string EngagementSlipsClutch = "engagementSlipsClutch";

    /// <summary>One of several devices is expected to act first.</summary>
    public const string ActsFirst = "actsFirst";

    /// <summary>One of several devices is expected to act first, but another may.</summary>
    public const string MayActFirst = "mayActFirst";

    /// <summary>Nobody can say which of several devices acts first.</summary>
    public const string FirstNotKnown = "firstNotKnown";

    /// <summary>What is fitted acts later than what the manual specifies.</summary>
    public const string FittedStronger = "fittedStronger";

    /// <summary>What is fitted acts earlier than what the manual specifies.</summary>
    public const string FittedWeaker = "fittedWeaker";

    /// <summary>What the manual specifies is not known.</summary>
    public const string SpecifiedNotKnown = "specifiedNotKnown";

    /// <summary>Repeated work peaks may tire the bolt after a number of hours.</summary>
    public const string BoltMayTire = "boltMayTire";

    /// <summary>The trip torque of this device scatters widely; a better-bounded grade would scatter less.</summary>
    public const string TripScattersWidely = "tripScattersWidely";
}
