namespace Driveline.Clutches;

/// <summary>What the friction faces are like.</summary>
public enum SurfaceState
{
    /// <summary>Anything from oiled to dry is possible.</summary>
    NotKnown = 0,

    /// <summary>No oil and no glaze, but in work now dry, now damp, now hot.</summary>
    CleanInWork,

    /// <summary>Clean, dry and cool.</summary>
    Dry,

    /// <summary>A film of water: rain, dew, wet crop.</summary>
    Damp,

    /// <summary>Hot from slipping, below the facing's maximum temperature.</summary>
    Hot,

    /// <summary>Oil or grease on the faces, from a trace to soaked.</summary>
    Oiled,

    /// <summary>Polished hard by overheating.</summary>
    Glazed,
}
