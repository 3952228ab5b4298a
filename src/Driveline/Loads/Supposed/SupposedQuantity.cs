namespace Driveline.Loads;

/// <summary>What a supposed value stands for.</summary>
public enum SupposedQuantity
{
    /// <summary>Torsional stiffness of a shaft, N·m/rad.</summary>
    Stiffness = 0,

    /// <summary>Inertia of a part at its own speed, kg·m².</summary>
    Inertia,

    /// <summary>Output speed over input speed of a gearbox.</summary>
    SpeedRatio,

    /// <summary>Torque that the PTO clutch passes, N·m.</summary>
    PtoClutchCapacity,

    /// <summary>Time in which the PTO clutch is engaged, s.</summary>
    EngagementTime,

    /// <summary>Torque that the line carries when a strike comes, N·m.</summary>
    WorkTorque,
}
