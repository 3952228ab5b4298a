namespace Driveline.Clutches;

/// <summary>How the torque of a clutch was found, worst first.</summary>
public enum SlipTorqueSource
{
    /// <summary>Not found: a needed fact is missing.</summary>
    NotKnown = 0,

    /// <summary>Calculated from friction, springs and geometry.</summary>
    Calculated,

    /// <summary>Stated by the machine's documents.</summary>
    Stated,

    /// <summary>Measured with a lever on this clutch.</summary>
    Measured,
}
