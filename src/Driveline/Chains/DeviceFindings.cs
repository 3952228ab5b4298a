namespace Driveline.Chains;

/// <summary>Codes of what is not known about a device in its place.</summary>
public static class DeviceFindings
{
    /// <summary>In how many planes each bolt shears is not known.</summary>
    public const string ShearPlanesNotKnown = "device.shearPlanesNotKnown";

    /// <summary>Whether the faces at the shear plane touch is not known.</summary>
    public const string StandOffNotKnown = "device.standOffNotKnown";

    /// <summary>The steel of the shaft that the bolt goes through is not known.</summary>
    public const string ShaftAtCrossHoleNotKnown = "device.shaftAtCrossHoleNotKnown";

    /// <summary>Nobody has measured the slip torque of this clutch: it is calculated or read in a document.</summary>
    public const string SlipTorqueNotMeasured = "device.slipTorqueNotMeasured";

    /// <summary>The slip torque was measured on faces that were not clean and dry.</summary>
    public const string SlipMeasuredNotDry = "device.slipMeasuredNotDry";

    /// <summary>The clutch's measures, springs and spring length are not all known: nobody can tell how near to solid it is.</summary>
    public const string ClutchNotDescribed = "device.clutchNotDescribed";

    /// <summary>The facing of the clutch is not known.</summary>
    public const string FacingNotKnown = "device.facingNotKnown";

    /// <summary>The day to which the age of the slip test counts is not known.</summary>
    public const string SlipTestUndated = "device.slipTestUndated";

    /// <summary>How often the clutch slips in work is not known.</summary>
    public const string SlipsPerHourNotKnown = "device.slipsPerHourNotKnown";

    /// <summary>The clutch slips in work, and how hot that makes it is not known.</summary>
    public const string SlipHeatNotKnown = "device.slipHeatNotKnown";

    /// <summary>The slips in work heat the linings above what they stand for long.</summary>
    public const string SlipsTooHot = "device.slipsTooHot";

    /// <summary>The kind of a cut-out clutch is not known.</summary>
    public const string CutOutKindNotKnown = "device.cutOutKindNotKnown";

    /// <summary>Nobody has seen the cut-out clutch trip since the machine last stood.</summary>
    public const string CutOutNotProven = "device.cutOutNotProven";
}
