namespace Driveline.Torsion;

/// <summary>What a link between two rotors, or between a rotor and the ground, is doing.</summary>
internal enum LinkState
{
    /// <summary>Not there yet: an obstacle before its time.</summary>
    Absent = 0,

    /// <summary>Carries torque without slip: elastic through its spring, or rigid.</summary>
    Locked,

    /// <summary>Slips with the driving side ahead; carries its running torque.</summary>
    SlipForward,

    /// <summary>Slips with the driven side ahead; carries its reverse running torque.</summary>
    SlipBackward,

    /// <summary>Faces apart: a gap that closes only when they meet again; carries nothing.</summary>
    Open,

    /// <summary>Broken, or not engaged yet: carries nothing.</summary>
    Free,
}
