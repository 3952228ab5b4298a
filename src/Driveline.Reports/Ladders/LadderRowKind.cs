namespace Driveline.Reports.Ladders;

/// <summary>What a row of the picture shows; decides colour and mark.</summary>
internal enum LadderRowKind
{
    /// <summary>The peaks of normal work.</summary>
    Work = 0,

    /// <summary>Engaging the PTO.</summary>
    Engagement,

    /// <summary>A device acts.</summary>
    Device,

    /// <summary>A part is damaged.</summary>
    Part,

    /// <summary>Free torque between two of them.</summary>
    Room,

    /// <summary>Torque in which two of them overlap.</summary>
    Overlap,

    /// <summary>Between two of them nothing can be shown.</summary>
    NoRoom,
}
