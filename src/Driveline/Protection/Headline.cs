namespace Driveline.Protection;

/// <summary>The verdict in one word. When several hold, the first in the order of precedence is given.</summary>
/// <remarks>Precedence: NoSettingFits, DoesNotProtect, TripsInWork, NotKnown, Doubtful, Protected.</remarks>
public enum Headline
{
    /// <summary>A needed fact is not known.</summary>
    NotKnown = 0,

    /// <summary>The weakest part is damaged below the torque of normal work: no bolt or spring can help.</summary>
    NoSettingFits,

    /// <summary>The device is expected to act only after the weakest part is damaged.</summary>
    DoesNotProtect,

    /// <summary>The device is expected to act in normal work.</summary>
    TripsInWork,

    /// <summary>One of the two questions stays open.</summary>
    Doubtful,

    /// <summary>It guards and it is quiet.</summary>
    Protected,
}
