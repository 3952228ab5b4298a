namespace Driveline.Cases;

/// <summary>What kind of element of the driveline it is.</summary>
internal enum ElementKind
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>Shaft, tube or axle.</summary>
    Shaft,

    /// <summary>Shear-bolt joint.</summary>
    ShearBolt,

    /// <summary>Gearbox; its ratio counts for all that follows.</summary>
    Gearbox,

    /// <summary>Universal joint.</summary>
    UniversalJoint,

    /// <summary>Working rotor: blades, drum, fan.</summary>
    Rotor,

    /// <summary>Flywheel.</summary>
    Flywheel,

    /// <summary>Yoke or hub.</summary>
    Yoke,

    /// <summary>Any other part that carries the torque.</summary>
    Part,

    /// <summary>Overrun clutch: drives one way only, and limits nothing in that direction.</summary>
    OverrunClutch,

    /// <summary>Friction-disc slip clutch.</summary>
    SlipClutch,

    /// <summary>Ratchet, cam or radial-pin clutch that cuts out.</summary>
    CutOut,

    /// <summary>A side drive that takes a stated share of the power.</summary>
    Branch,
}
