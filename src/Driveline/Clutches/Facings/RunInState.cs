namespace Driveline.Clutches;

/// <summary>Whether the faces have worn to fit each other.</summary>
public enum RunInState
{
    /// <summary>Not known: results span uniform wear and uniform pressure.</summary>
    NotKnown = 0,

    /// <summary>New and flat: the pressure is uniform.</summary>
    New,

    /// <summary>Run in: the wear is uniform.</summary>
    RunIn,
}
