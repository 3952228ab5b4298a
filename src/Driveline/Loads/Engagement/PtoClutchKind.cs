namespace Driveline.Loads;

/// <summary>How the tractor engages its PTO.</summary>
public enum PtoClutchKind
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>By a hand lever or pedal, which can be engaged gently.</summary>
    HandLever,

    /// <summary>By oil pressure; snaps in or ramps as its maker set it.</summary>
    Hydraulic,

    /// <summary>By an electric switch that works an oil or magnet clutch; the driver cannot feather it.</summary>
    Electric,

    /// <summary>No PTO clutch of its own: it starts with the travel clutch.</summary>
    None,
}
