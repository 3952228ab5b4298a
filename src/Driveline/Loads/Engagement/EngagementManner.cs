namespace Driveline.Loads;

/// <summary>How the driver lets the PTO clutch in.</summary>
public enum EngagementManner
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Snapped in, or at high engine speed.</summary>
    Abrupt,

    /// <summary>Engaged slowly at low engine speed.</summary>
    Gentle,
}
