namespace Driveline.Advice;

/// <summary>Where something is found out. Nothing is ever found out beside a running PTO.</summary>
public enum CheckPlace
{
    /// <summary>Not known: never proposed.</summary>
    NotKnown = 0,

    /// <summary>From the driver's seat with nobody near, the PTO engaged as the manual's slip test asks.</summary>
    Seat,

    /// <summary>At the machine, everything standing still and the key out.</summary>
    Standstill,

    /// <summary>At the desk: the owner knows it or looks it up.</summary>
    Desk,
}
