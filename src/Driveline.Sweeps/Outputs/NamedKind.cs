namespace Driveline.Sweeps.Outputs;

/// <summary>What an output may be of, by the name in brackets.</summary>
internal enum NamedKind
{
    /// <summary>Nothing is named.</summary>
    Nothing = 0,

    /// <summary>A part; it must be named.</summary>
    Part,

    /// <summary>A part or device; it must be named.</summary>
    Element,

    /// <summary>A shear bolt; the first when none is named.</summary>
    ShearBolt,

    /// <summary>A slip clutch; the first when none is named.</summary>
    SlipClutch,
}
