namespace Driveline.Protection;

/// <summary>Codes of what a simulated event did to the parts and should have done to the device. They never change their meaning.</summary>
public static class StrikeFindings
{
    /// <summary>A part is loaded beyond what it is expected to stand, with the protection as it is fitted.</summary>
    public const string Overloaded = "simulation.overload";

    /// <summary>A part may be loaded beyond what it stands, with the protection as it is fitted.</summary>
    public const string MayOverload = "simulation.mayOverload";

    /// <summary>Without the protection a part would have been loaded beyond what it is expected to stand.</summary>
    public const string SavedByDevice = "simulation.savedByDevice";

    /// <summary>The blow stayed below the torque at which even a weak device in good order acts.</summary>
    public const string BelowTrip = "strike.belowTrip";

    /// <summary>The blow may or may not make a device in good order act.</summary>
    public const string MayHaveTripped = "strike.mayHaveTripped";

    /// <summary>The blow makes even a strong device in good order act.</summary>
    public const string ShouldHaveTripped = "strike.shouldHaveTripped";

    /// <summary>The device as fitted does not act, though one in good order would: the blow is passed on.</summary>
    public const string PassedOn = "strike.passedOn";

    /// <summary>What was struck was cut through at once: the rotor's own motion took the blow.</summary>
    public const string TakenByRotor = "strike.takenByRotor";

    /// <summary>The blow went into the deck and passed the driveline by.</summary>
    public const string DidNotPassDriveline = "strike.didNotPassDriveline";
}
