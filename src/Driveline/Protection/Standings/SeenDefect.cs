namespace Driveline.Protection;

/// <summary>A defect that somebody has seen and that forbids work, in the order in which they are named.</summary>
public enum SeenDefect
{
    /// <summary>The clutch smokes.</summary>
    ClutchSmokes = 0,

    /// <summary>Nothing at all is fitted that would give.</summary>
    NoDevice,

    /// <summary>The hub does not turn on its shaft with the bolt out.</summary>
    HubSeized,

    /// <summary>The hub turns stiffly.</summary>
    HubStiff,

    /// <summary>The clutch is stuck.</summary>
    ClutchStuck,

    /// <summary>The clutch's springs are pressed solid.</summary>
    ClutchSolid,

    /// <summary>The clutch slips so often that its linings get too hot.</summary>
    ClutchOverheats,

    /// <summary>The driveline's tube is twisted.</summary>
    TubeTwisted,

    /// <summary>The gearbox is broken.</summary>
    GearboxBroken,

    /// <summary>A blade is bent, or the blades are unequal.</summary>
    BladesBent,
}
