namespace Driveline.Torsion;

/// <summary>What a bound being crossed means for the run.</summary>
internal enum Crossing
{
    /// <summary>Nothing crossed.</summary>
    None = 0,

    /// <summary>Torque rises above what the link holds forward.</summary>
    SlipForward,

    /// <summary>Torque falls below what the link holds in reverse.</summary>
    SlipBackward,

    /// <summary>Slip comes to rest.</summary>
    SlipEnd,

    /// <summary>A swing-back travel is used up.</summary>
    SwingEnd,

    /// <summary>A yielding obstacle is cut through.</summary>
    CutThrough,

    /// <summary>Faces of a gap meet again, driving side pushing forward.</summary>
    FacesMeet,

    /// <summary>The other faces of a gap meet.</summary>
    ReverseFacesMeet,

    /// <summary>The drive reaches its largest torque.</summary>
    DriveMost,

    /// <summary>The drive reaches its least torque.</summary>
    DriveLeast,

    /// <summary>The drive comes back to its line.</summary>
    DriveOnLine,
}
