namespace Driveline.Torsion;

/// <summary>What happened in a transient.</summary>
public enum TransientEventKind
{
    /// <summary>Unknown.</summary>
    NotKnown = 0,

    /// <summary>A breaking coupling reached its capacity and broke.</summary>
    Broke,

    /// <summary>A friction coupling or friction load began to slip.</summary>
    SlipStarted,

    /// <summary>A friction coupling or friction load came to rest.</summary>
    SlipEnded,

    /// <summary>A coupling began to take hold.</summary>
    Engaging,

    /// <summary>A one-way coupling began to overrun.</summary>
    OverrunStarted,

    /// <summary>A one-way coupling drives again.</summary>
    OverrunEnded,

    /// <summary>A rotor met an obstacle, or the faces of a backlash met.</summary>
    FacesMet,

    /// <summary>A rotor left an obstacle, or the faces of a backlash parted.</summary>
    FacesParted,

    /// <summary>An obstacle began to yield, or blades began to swing back.</summary>
    Yielding,

    /// <summary>An obstacle stopped yielding.</summary>
    YieldingEnded,

    /// <summary>Blades have swung back as far as they can.</summary>
    SwungBack,

    /// <summary>The drive reached its largest or least torque.</summary>
    DriveLimited,

    /// <summary>The drive came back to its torque–speed line.</summary>
    DriveOnLine,

    /// <summary>An obstacle was cut through and is gone.</summary>
    CutThrough,
}
