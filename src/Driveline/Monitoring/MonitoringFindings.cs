namespace Driveline.Monitoring;

/// <summary>Codes of what monitoring reports.</summary>
public static class MonitoringFindings
{
    /// <summary>Too few peaks were seen for a tail.</summary>
    public const string TooFewPeaks = "monitor.tooFewPeaks";

    /// <summary>The peaks are all alike: something cuts them, or the sensor is too coarse.</summary>
    public const string PeaksAlike = "monitor.peaksAlike";

    /// <summary>The tail is so heavy that its interval has no end.</summary>
    public const string TailTooHeavy = "monitor.tailTooHeavy";

    /// <summary>The time asked about is much longer than the time seen.</summary>
    public const string FarAhead = "monitor.farAhead";

    /// <summary>The protection acted in work, and nobody says it was at a strike.</summary>
    public const string ActedInWork = "monitor.actedInWork";

    /// <summary>Without a speed behind the device nobody knows whether it acted.</summary>
    public const string SpeedOutNotMeasured = "monitor.speedOutNotMeasured";

    /// <summary>The torques were upper bounds: how high the peak really was is not known.</summary>
    public const string TorqueIsUpperBound = "monitor.torqueIsUpperBound";

    /// <summary>Samples come so seldom that most peaks fall between them.</summary>
    public const string TooSlowForPeaks = "monitor.tooSlowForPeaks";

    /// <summary>Samples come so seldom that short peaks fall between them.</summary>
    public const string SlowForPeaks = "monitor.slowForPeaks";

    /// <summary>Many samples are missing.</summary>
    public const string ManyMissing = "monitor.manyMissing";

    /// <summary>Torques beyond the full scale were counted at it.</summary>
    public const string BeyondScale = "monitor.beyondScale";

    /// <summary>The torque was higher than the fatigue curve holds for.</summary>
    public const string AboveCurve = "monitor.aboveCurve";

    /// <summary>The slip torque falls from slip to slip.</summary>
    public const string SlipTorqueFalls = "monitor.slipTorqueFalls";

    /// <summary>The slip torque rises from slip to slip.</summary>
    public const string SlipTorqueRises = "monitor.slipTorqueRises";
}
