namespace Driveline.Monitoring;

/// <summary>Why a snapshot was refused.</summary>
public enum SnapshotProblem
{
    /// <summary>It was taken.</summary>
    None = 0,

    /// <summary>It does not begin as a snapshot does, or is far too short.</summary>
    NotASnapshot,

    /// <summary>Its checksum is wrong: it was damaged or cut.</summary>
    Corrupted,

    /// <summary>A newer version of the library wrote it.</summary>
    NewerVersion,

    /// <summary>It belongs to a monitor with other settings.</summary>
    OtherSettings,

    /// <summary>Its checksum is right, yet its content cannot be that of a monitor.</summary>
    Impossible,
}
