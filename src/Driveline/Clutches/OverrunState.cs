namespace Driveline.Clutches;

/// <summary>Whether an overrun clutch still lets the machine run on.</summary>
public enum OverrunState
{
    /// <summary>Not checked: the machine may drive the tractor.</summary>
    NotKnown = 0,

    /// <summary>Turns freely one way, checked by hand with the engine stopped.</summary>
    Free,

    /// <summary>Locked by dirt or rust: the machine drives the tractor.</summary>
    Locked,

    /// <summary>Slips in the driving direction: worn out.</summary>
    SlipsDriving,
}
