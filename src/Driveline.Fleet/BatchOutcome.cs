namespace Driveline.Fleet;

/// <summary>What became of a batch.</summary>
public enum BatchOutcome
{
    /// <summary>Refused for good; <see cref="BatchAnswer.Refusal"/> says why. Nothing has changed.</summary>
    Refused = 0,

    /// <summary>Taken, and stored: it need not be kept any longer.</summary>
    Taken,

    /// <summary>It had been taken before, and is stored. Nothing has changed.</summary>
    Repeated,

    /// <summary>It waits in memory for batches before it; not stored yet, so it must be kept and sent again.</summary>
    Waiting,

    /// <summary>There is no room now; send it again after <see cref="BatchAnswer.RetryAfter"/>. Nothing is lost by that.</summary>
    Busy,
}
