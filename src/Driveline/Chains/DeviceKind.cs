namespace Driveline.Chains;

/// <summary>What a protective device is.</summary>
public enum DeviceKind
{
    /// <summary>Not known: only its trip torque is stated.</summary>
    NotKnown = 0,

    /// <summary>A shear bolt or pin.</summary>
    ShearBolt,

    /// <summary>A friction-disc slip clutch.</summary>
    SlipClutch,

    /// <summary>A ratchet, cam or radial-pin device that cuts out.</summary>
    CutOut,
}
