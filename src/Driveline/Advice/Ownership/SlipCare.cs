namespace Driveline.Advice;

/// <summary>
/// How often the owner slips and resets the clutch. The habit, not the clutch, decides whether it still slips when needed.
/// </summary>
public enum SlipCare
{
    /// <summary>Not known: counted like never, because a clutch nobody has seen slip may be stuck.</summary>
    NotKnown = 0,

    /// <summary>Never.</summary>
    Never,

    /// <summary>Now and then, not every year.</summary>
    Sometimes,

    /// <summary>Loosened, slipped and reset every year.</summary>
    EveryYear,
}
