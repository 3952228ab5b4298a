namespace Driveline.Protection;

/// <summary>The verdict in one word. When several hold, the first in the order of precedence is given.</summary>
/// <remarks>
/// Precedence: NoSettingFits, DoesNotProtect, TripsInWork, Protected, AsSpecified, NotKnown, Doubtful. Numbers stay as they are.
/// </remarks>
public enum Headline
{
    /// <summary>A needed fact is not known.</summary>
    NotKnown = 0,

    /// <summary>The weakest part is damaged below the torque of normal work: no bolt or spring can help.</summary>
    NoSettingFits = 1,

    /// <summary>The device is expected to act only after the weakest part is damaged.</summary>
    DoesNotProtect = 2,

    /// <summary>The device is expected to act in normal work.</summary>
    TripsInWork = 3,

    /// <summary>One of the two questions stays open.</summary>
    Doubtful = 4,

    /// <summary>It guards and it is quiet.</summary>
    Protected = 5,

    /// <summary>It is what the maker specified, in working order, and nothing was found against it; margins are not known.</summary>
    AsSpecified = 6,
}
