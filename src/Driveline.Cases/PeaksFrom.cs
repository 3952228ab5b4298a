namespace Driveline.Cases;

/// <summary>Where the torque of an engagement is from.</summary>
internal enum PeaksFrom
{
    /// <summary>Not stated: as stated, as far as it is.</summary>
    NotKnown = 0,

    /// <summary>Stated or measured.</summary>
    Stated,

    /// <summary>Simulated from the facts of the case.</summary>
    Simulated,
}
