namespace Driveline.Pto;

/// <summary>Cross-section of a shaft.</summary>
internal enum SectionShape
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Solid round bar.</summary>
    SolidRound,

    /// <summary>Round tube.</summary>
    RoundTube,

    /// <summary>Splined stub, taken as a plain bar of the root circle.</summary>
    SplinedRoot,

    /// <summary>Square bar or tube.</summary>
    Square,

    /// <summary>Rectangular bar or tube.</summary>
    Rectangular,

    /// <summary>Lemon-shaped telescoping tube.</summary>
    LemonTube,

    /// <summary>Star-shaped telescoping tube.</summary>
    StarTube,
}
