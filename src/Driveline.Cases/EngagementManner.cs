namespace Driveline.Cases;

/// <summary>How the PTO is usually engaged.</summary>
public enum EngagementManner
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>Slowly, at low speed, unloaded.</summary>
    Gentle,

    /// <summary>At speed, loaded, or by dropping the clutch.</summary>
    Abrupt,
}
