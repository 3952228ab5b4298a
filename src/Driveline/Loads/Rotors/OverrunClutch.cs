namespace Driveline.Loads;

/// <summary>Whether the line has an overrun clutch (freewheel) before the rotor.</summary>
internal enum OverrunClutch
{
    /// <summary>Not known: the worse case is taken.</summary>
    NotKnown = 0,

    /// <summary>None.</summary>
    None,

    /// <summary>Fitted and free.</summary>
    Fitted,
}
