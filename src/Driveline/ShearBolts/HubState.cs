namespace Driveline.ShearBolts;

/// <summary>Whether the two halves of the joint turn on each other once the bolt has parted.</summary>
public enum HubState
{
    /// <summary>Not known: nothing assures that the joint lets go.</summary>
    NotKnown = 0,

    /// <summary>Seized by rust or damage: the joint may never let go.</summary>
    Seized,

    /// <summary>Turns, but drags: the drag adds to the break torque.</summary>
    Stiff,

    /// <summary>Turns freely by hand.</summary>
    Free,
}
