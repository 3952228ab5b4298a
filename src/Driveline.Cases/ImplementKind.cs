namespace Driveline.Cases;

/// <summary>What kind of implement is driven.</summary>
public enum ImplementKind
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>Rotary cutter or brush cutter.</summary>
    RotaryCutter,

    /// <summary>Flail mower or mulcher.</summary>
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

    /// <summary>Manure or fertiliser spreader.</summary>
    Spreader,

    /// <summary>Feed mixer.</summary>
    FeedMixer,

    /// <summary>Wood chipper.</summary>
    WoodChipper,

    /// <summary>Grain or auger wagon.</summary>
    AugerWagon,

    /// <summary>Another kind.</summary>
    Other,
}
