namespace Driveline.Fasteners;

/// <summary>Scale of a hardness reading.</summary>
public enum HardnessScale
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Vickers (HV), ISO 6507.</summary>
    Vickers,

    /// <summary>Brinell with a tungsten-carbide ball (HBW), ISO 6506; HB is read as HBW.</summary>
    Brinell,

    /// <summary>Rockwell B (HRB), ISO 6508.</summary>
    RockwellB,

    /// <summary>Rockwell C (HRC), ISO 6508.</summary>
    RockwellC,
}
