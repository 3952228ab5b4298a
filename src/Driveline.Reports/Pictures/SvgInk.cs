namespace Driveline.Reports.Pictures;

/// <summary>What a shape of a picture stands for; the palette gives it its colours by class, never the shape itself.</summary>
internal enum SvgInk
{
    /// <summary>Nothing is painted.</summary>
    None = 0,

    /// <summary>Words, axes, outlines.</summary>
    Ink,

    /// <summary>Words and lines of less weight.</summary>
    Faint,

    /// <summary>Lines of a grid.</summary>
    Grid,

    /// <summary>The ground of the picture.</summary>
    Paper,

    /// <summary>Normal work; a run with protection.</summary>
    Work,

    /// <summary>Engaging the PTO.</summary>
    Engagement,

    /// <summary>A protective device.</summary>
    Device,

    /// <summary>A part and its damage.</summary>
    Part,

    /// <summary>Free torque; all is well.</summary>
    Room,

    /// <summary>Overlap, damage; a run without protection.</summary>
    Overlap,

    /// <summary>In doubt.</summary>
    Careful,

    /// <summary>The ground behind free torque.</summary>
    RoomGround,

    /// <summary>The ground behind an overlap.</summary>
    OverlapGround,

    /// <summary>The ground of the torques that damage a part.</summary>
    LimitGround,

    /// <summary>The moment at which a device acts.</summary>
    Trip,

    /// <summary>Steel of a sketch.</summary>
    Steel,

    /// <summary>Another piece of steel beside it.</summary>
    OtherSteel,
}
