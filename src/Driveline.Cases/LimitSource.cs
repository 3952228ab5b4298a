namespace Driveline.Cases;

/// <summary>Which statement a part's limit is taken from.</summary>
public enum LimitSource
{
    /// <summary>No complete statement.</summary>
    NotKnown = 0,

    /// <summary>The rated torque times the overload factor.</summary>
    RatedTorque,

    /// <summary>Its diameters and the strength of its material.</summary>
    Geometry,

    /// <summary>The damaging torque as stated.</summary>
    DamagedAt,
}
