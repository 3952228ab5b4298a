namespace Driveline.Sweeps.Outputs;

/// <summary>What the kernel of a device computes.</summary>
internal enum ClosedKind
{
    /// <summary>Break torque of a shear bolt, N·m.</summary>
    BreakTorque = 0,

    /// <summary>Torque of a clutch while it slips, N·m.</summary>
    SlipTorque,

    /// <summary>Torque that starts a slip, N·m.</summary>
    Breakaway,

    /// <summary>Clamp force of the springs of a clutch, N.</summary>
    ClampForce,
}
