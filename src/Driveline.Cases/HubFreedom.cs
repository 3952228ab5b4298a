namespace Driveline.Cases;

/// <summary>Whether hub and shaft turn on each other with the bolt out.</summary>
public enum HubFreedom
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>They turn by hand.</summary>
    Free,

    /// <summary>They turn with force.</summary>
    Stiff,

    /// <summary>They do not turn.</summary>
    Seized,
}
