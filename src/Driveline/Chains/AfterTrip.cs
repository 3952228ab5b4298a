namespace Driveline.Chains;

/// <summary>What a device does once it has acted.</summary>
public enum AfterTrip
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>The torque is gone until somebody mends it: a shear bolt.</summary>
    TorqueGone,

    /// <summary>The torque is held while it slips, and it heats: a friction clutch.</summary>
    TorqueHeld,

    /// <summary>The torque falls and comes back below a stated speed: a cam device.</summary>
    TorqueFallsUntilSlow,

    /// <summary>The torque comes in pulses up to the trip torque while the drive turns: a ratchet or radial-pin device.</summary>
    TorquePulses,
}
