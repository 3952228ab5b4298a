namespace Driveline.Cases;

/// <summary>How the shear bolt lies.</summary>
public enum BoltLayout
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>Through hub and shaft, across the axis: two planes at the shaft's radius.</summary>
    ThroughShaft,

    /// <summary>Parallel to the axis, on a bolt circle.</summary>
    BoltCircle,

    /// <summary>Across, beside the shaft, at a stated radius.</summary>
    Tangential,
}
