namespace Driveline.Clutches;

/// <summary>Codes of the findings about slip clutches. Their English words are in the texts of this name.</summary>
public static class ClutchFindings
{
    /// <summary>The length the springs are set to is not known: no torque can be given.</summary>
    public const string SpringLengthNotKnown = "clutch.springLengthNotKnown";

    /// <summary>The springs are solid or flat: the clutch cannot slip at a known torque.</summary>
    public const string SpringsSolid = "clutch.springsSolid";

    /// <summary>Within its tolerance the set length may be solid.</summary>
    public const string SpringsMayBeSolid = "clutch.springsMayBeSolid";

    /// <summary>The set length is shorter than the springs can be.</summary>
    public const string ShorterThanSolid = "clutch.shorterThanSolid";

    /// <summary>The set length, or the length after wear, is the free length or longer: no clamp force.</summary>
    public const string SpringsLoose = "clutch.springsLoose";

    /// <summary>Facing pressure above the limit of the facing.</summary>
    public const string FacingPressureHigh = "clutch.facingPressureHigh";

    /// <summary>No pressure limit is known for the facing.</summary>
    public const string FacingLimitNotKnown = "clutch.facingLimitNotKnown";

    /// <summary>It is not known whether the faces are run in.</summary>
    public const string RunInNotKnown = "clutch.runInNotKnown";

    /// <summary>The faces are new and not run in.</summary>
    public const string NotRunIn = "clutch.notRunIn";

    /// <summary>The state of the faces is not known.</summary>
    public const string SurfaceNotKnown = "clutch.surfaceNotKnown";

    /// <summary>Oil or grease on the faces.</summary>
    public const string Oiled = "clutch.oiled";

    /// <summary>Glazed faces.</summary>
    public const string Glazed = "clutch.glazed";

    /// <summary>The wear since the setting is not known.</summary>
    public const string WearNotKnown = "clutch.wearNotKnown";

    /// <summary>Wear has reached the limit at which linings are replaced.</summary>
    public const string WornOut = "clutch.wornOut";

    /// <summary>The clutch is stuck or did not slip in its test.</summary>
    public const string Stuck = "clutch.stuck";

    /// <summary>No slip test is known.</summary>
    public const string NoSlipTest = "clutch.noSlipTest";

    /// <summary>The machine has stood since the slip test.</summary>
    public const string TestBeforeStorage = "clutch.testBeforeStorage";

    /// <summary>It is not known when the machine last stood.</summary>
    public const string StorageNotKnown = "clutch.storageNotKnown";

    /// <summary>The slip test is more than a year old.</summary>
    public const string TestTooOld = "clutch.testTooOld";

    /// <summary>Stood in a damp place without a slip test since.</summary>
    public const string StoodMoist = "clutch.stoodMoist";

    /// <summary>The torque is a lever measurement.</summary>
    public const string Measured = "clutch.measured";

    /// <summary>The measured torque holds for clean, dry, cool faces; what heat or damp change is not counted.</summary>
    public const string FadeNotCounted = "clutch.fadeNotCounted";

    /// <summary>The lever measurement lies outside the calculated band.</summary>
    public const string MeasuredDiffers = "clutch.measuredDiffers";

    /// <summary>The springs are set tighter than the lever measurement fits: they may have been tightened since.</summary>
    public const string TighterThanMeasured = "clutch.tighterThanMeasured";

    /// <summary>A small error of the spring length changes the torque much.</summary>
    public const string SensitiveSetting = "clutch.sensitiveSetting";

    /// <summary>The wanted torque cannot be reached before the springs are solid.</summary>
    public const string SettingNotReached = "clutch.settingNotReached";

    /// <summary>Wear up to the replacement limit takes more than the spring deflection.</summary>
    public const string NoWearTravel = "clutch.noWearTravel";

    /// <summary>Little travel is left before the springs are solid.</summary>
    public const string LittleTravelLeft = "clutch.littleTravelLeft";

    /// <summary>Wear up to the replacement limit costs a large share of the torque.</summary>
    public const string WearTakesTorque = "clutch.wearTakesTorque";

    /// <summary>The slip heats the facing above its continuous temperature.</summary>
    public const string AboveContinuousTemperature = "clutch.aboveContinuousTemperature";

    /// <summary>The slip heats the facing above its maximum temperature.</summary>
    public const string AboveMaximumTemperature = "clutch.aboveMaximumTemperature";

    /// <summary>The temperature limits of the facing are not known.</summary>
    public const string TemperatureLimitNotKnown = "clutch.temperatureLimitNotKnown";

    /// <summary>Slip power per area above the working rating of the facing.</summary>
    public const string SlipPowerHigh = "clutch.slipPowerHigh";

    /// <summary>The slip lasts longer than the longest stated by an instruction manual.</summary>
    public const string SlipTooLong = "clutch.slipTooLong";

    /// <summary>The slip is long enough to make the clutch too hot to touch.</summary>
    public const string HotToTouch = "clutch.hotToTouch";

    /// <summary>The slip never ends by itself.</summary>
    public const string SlipNeverEnds = "clutch.slipNeverEnds";

    /// <summary>The driveline carries nothing after the trip until the speed is lowered.</summary>
    public const string CutOutHoldsOpen = "clutch.cutOutHoldsOpen";

    /// <summary>The trip of a cut-out clutch is not known.</summary>
    public const string CutOutTripNotKnown = "clutch.cutOutTripNotKnown";
}
