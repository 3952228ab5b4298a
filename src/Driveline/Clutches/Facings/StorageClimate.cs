namespace Driveline.Clutches;

/// <summary>How damp the place is in which the machine stands.</summary>
public enum StorageClimate
{
    /// <summary>Not known; treated as moist.</summary>
    NotKnown = 0,

    /// <summary>Outdoors, or under a roof where iron rusts.</summary>
    Moist,

    /// <summary>Indoors, where bare iron stays bright.</summary>
    Dry,
}
