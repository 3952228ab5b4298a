namespace Driveline.Chains;

/// <summary>What a part of the driveline is.</summary>
public enum PartKind
{
    /// <summary>Not known, or none of the others.</summary>
    NotKnown = 0,

    /// <summary>The tractor's PTO stub with its splines.</summary>
    PtoStub,

    /// <summary>A shaft or drive tube.</summary>
    Shaft,

    /// <summary>A universal joint.</summary>
    UniversalJoint,

    /// <summary>A yoke, hub or flange.</summary>
    Yoke,

    /// <summary>A gearbox, chain or belt drive: anything with a speed ratio.</summary>
    Gearbox,

    /// <summary>A shaft at the cross-hole of its own shear bolt.</summary>
    ShaftAtCrossHole,

    /// <summary>An overrun clutch.</summary>
    OverrunClutch,

    /// <summary>A working rotor: blades and carrier, drum, auger flighting.</summary>
    Rotor,

    /// <summary>A flywheel.</summary>
    Flywheel,

    /// <summary>Another part whose limit is known by itself.</summary>
    Other,
}
