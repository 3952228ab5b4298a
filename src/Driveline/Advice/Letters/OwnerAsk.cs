namespace Driveline.Advice;

/// <summary>What an owner asks beside what is wrong.</summary>
public enum OwnerAsk
{
    /// <summary>Nothing, or nothing that is listed here.</summary>
    NotKnown = 0,

    /// <summary>Is the tractor hurt?</summary>
    TractorHurt,

    /// <summary>May the bolt be one grade stronger?</summary>
    OneGradeUp,

    /// <summary>Would a slip clutch suit the work, and what care does it want?</summary>
    ClutchInstead,

    /// <summary>Does rough ground change the clutch's setting?</summary>
    RoughGround,

    /// <summary>How does the broken bolt come out?</summary>
    StuckBolt,

    /// <summary>Would another machine pay?</summary>
    OtherMachine,
}
