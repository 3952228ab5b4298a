namespace Driveline.Fasteners;

/// <summary>Inch or metric screw threads.</summary>
internal enum ThreadSystem
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Unified inch threads.</summary>
    Inch,

    /// <summary>ISO metric threads.</summary>
    Metric,
}
