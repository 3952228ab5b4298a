namespace Driveline.Cases;

/// <summary>What is wrong.</summary>
public enum Symptom
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>The bolt breaks, or the clutch slips, in normal work.</summary>
    BreaksOften,

    /// <summary>Something dear broke and the protection did not act.</summary>
    NothingGave,

    /// <summary>The slip clutch slips, smokes or burns.</summary>
    SlipsTooMuch,

    /// <summary>The bolt bends or loosens without breaking.</summary>
    BoltBends,

    /// <summary>It is not clear whether anything is wrong.</summary>
    NotSure,
}
