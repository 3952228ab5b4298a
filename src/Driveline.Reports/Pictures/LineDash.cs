namespace Driveline.Reports.Pictures;

/// <summary>How a line is broken.</summary>
internal enum LineDash
{
    /// <summary>Not at all.</summary>
    Solid = 0,

    /// <summary>Dashes.</summary>
    Dashed,

    /// <summary>Dots.</summary>
    Dotted,

    /// <summary>Long dashes and dots.</summary>
    DashDotted,
}
