namespace Driveline.Clutches;

/// <summary>How a cut-out clutch lets go.</summary>
public enum CutOutKind
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Spring-loaded cams that fold away: torque falls to zero until the speed is low again.</summary>
    Cam,

    /// <summary>Ratchet: snaps from tooth to tooth with noise and torque pulses while the drive turns.</summary>
    Ratchet,

    /// <summary>Spring-loaded radial pins that jump from hole to hole.</summary>
    RadialPin,
}
