namespace Driveline.Cases;

/// <summary>How the tractor's PTO clutch is worked.</summary>
public enum PtoClutchKind
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>A dry clutch worked by lever or pedal.</summary>
    HandLever,

    /// <summary>A wet clutch pressed by oil.</summary>
    Hydraulic,

    /// <summary>A clutch switched by a button, modulated or not.</summary>
    Electric,

    /// <summary>There is none: the PTO runs with the gearbox.</summary>
    None,
}
