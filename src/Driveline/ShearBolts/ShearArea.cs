namespace Driveline.ShearBolts;

/// <summary>The area a shear-to-tensile ratio is to be multiplied with.</summary>
internal enum ShearArea
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Area at the root of the thread, the smallest a threaded plane can have.</summary>
    Root,

    /// <summary>Tensile stress area of the thread.</summary>
    Stress,

    /// <summary>Plain round section: shank, pin, neck, step or taper.</summary>
    Plain,

    /// <summary>What a threaded plane carries on average, as an area: 1.08 stress areas, at most the plain shank.</summary>
    MeanThreaded,

    /// <summary>
    /// What a threaded plane carries at most, as an area: the larger of 1.16 stress areas and 0.89 of the shank, at most the plain shank.
    /// </summary>
    GreatestThreaded,
}
