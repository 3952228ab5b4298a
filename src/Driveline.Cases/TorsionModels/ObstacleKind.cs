namespace Driveline.Cases.TorsionModels;

/// <summary>What an obstacle of a model file does.</summary>
internal enum ObstacleKind
{
    /// <summary>Not stated: pushes only.</summary>
    NotKnown = 0,

    /// <summary>A spring and damper that push but never pull.</summary>
    Pushes,

    /// <summary>A spring and damper that push and pull.</summary>
    Ties,

    /// <summary>A stop without give, in the driving direction.</summary>
    Stops,

    /// <summary>A stop without give, in both directions.</summary>
    Jams,
}
