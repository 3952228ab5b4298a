namespace Driveline.Fasteners;

/// <summary>Kind of spring pin or dowel.</summary>
internal enum SpringPinKind
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Slotted, heavy duty: ISO 8752.</summary>
    SlottedHeavy,

    /// <summary>Slotted, light duty: ISO 13337.</summary>
    SlottedLight,

    /// <summary>Coiled, heavy duty: ISO 8748.</summary>
    CoiledHeavy,

    /// <summary>Coiled, standard duty: ISO 8750.</summary>
    CoiledStandard,

    /// <summary>Coiled, light duty: ISO 8751.</summary>
    CoiledLight,

    /// <summary>Slotted, inch sizes: ASME B18.8.2.</summary>
    SlottedInch,

    /// <summary>Solid, hardened and ground: ASME B18.8.2.</summary>
    HardenedDowel,
}
