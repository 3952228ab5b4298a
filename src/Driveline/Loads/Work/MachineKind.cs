namespace Driveline.Loads;

/// <summary>The kind of implement, which decides the parts to expect and the peaks to expect.</summary>
public enum MachineKind
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>Rotary cutter (brush or pasture cutter).</summary>
    RotaryCutter,

    /// <summary>Flail mower.</summary>
    FlailMower,

    /// <summary>Rotary tiller.</summary>
    RotaryTiller,

    /// <summary>Post-hole auger.</summary>
    PostHoleAuger,

    /// <summary>Snow blower.</summary>
    SnowBlower,

    /// <summary>Round baler.</summary>
    RoundBaler,

    /// <summary>Small square baler.</summary>
    SmallSquareBaler,

    /// <summary>Fertilizer or manure spreader.</summary>
    Spreader,

    /// <summary>Feed mixer.</summary>
    FeedMixer,

    /// <summary>Wood chipper.</summary>
    WoodChipper,

    /// <summary>Auger wagon or grain auger.</summary>
    AugerWagon,

    /// <summary>Another machine.</summary>
    Other,
}
