namespace Driveline.Clutches;

/// <summary>What a slip test showed.</summary>
public enum SlipTestOutcome
{
    /// <summary>Not recorded.</summary>
    NotKnown = 0,

    /// <summary>The faces did not move on each other.</summary>
    DidNotSlip,

    /// <summary>The faces moved on each other.</summary>
    Slipped,
}
