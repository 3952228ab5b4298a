namespace Driveline.Loads;

/// <summary>What a simulation makes of the protective devices.</summary>
internal enum SimulatedDevices
{
    /// <summary>Not stated: taken as if nothing could act.</summary>
    NotKnown = 0,

    /// <summary>None can act: what the driveline would carry without protection.</summary>
    Blocked,

    /// <summary>As they are fitted; one that is stuck passes everything on.</summary>
    Fitted,

    /// <summary>As they would be in good order: hub free, clutch free.</summary>
    Healthy,
}
