namespace Driveline.Advice;

/// <summary>Where the machine stands between jobs.</summary>
public enum StorageClimate
{
    /// <summary>Not known: counted as moist.</summary>
    NotKnown = 0,

    /// <summary>Moist, or outdoors.</summary>
    Moist,

    /// <summary>Dry and under a roof.</summary>
    Dry,
}
