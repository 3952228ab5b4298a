namespace Driveline.Monitoring;

/// <summary>What a monitor saw.</summary>
public enum MonitorEventKind
{
    /// <summary>Nothing; an event that no monitor wrote.</summary>
    None = 0,

    /// <summary>The torque stood above the overload level.</summary>
    Overload,

    /// <summary>The speeds parted and the torque fell: the device let go.</summary>
    Trip,

    /// <summary>The device turned through under torque.</summary>
    Slip,

    /// <summary>The PTO was engaged.</summary>
    Engagement,

    /// <summary>The faces of the clutch were hotter than they may be.</summary>
    Overheat,

    /// <summary>No sample came for longer than the longest step, or the clock began anew.</summary>
    Gap,
}
