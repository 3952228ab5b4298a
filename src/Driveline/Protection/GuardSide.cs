namespace Driveline.Protection;

/// <summary>From which side a part is guarded.</summary>
public enum GuardSide
{
    /// <summary>No device limits its torque.</summary>
    NotGuarded = 0,

    /// <summary>The device lies between the tractor and the part: it limits what the tractor can send.</summary>
    DriveSide,

    /// <summary>The device lies between the part and the work: it limits what the work can hold against the tractor.</summary>
    WorkSide,
}
