namespace Driveline.Advice;

/// <summary>How the shear bolt is reached, which decides the time of a change.</summary>
public enum BoltAccess
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>In a yoke or flange within reach.</summary>
    YokeInReach,

    /// <summary>Through the shaft at the gearbox, under a shield or hood.</summary>
    ThroughShaftAtGearbox,
}
