namespace Driveline.Monitoring;

/// <summary>What a sample is to a monitor.</summary>
internal enum SampleStep
{
    /// <summary>Left out.</summary>
    Dropped = 0,

    /// <summary>The first.</summary>
    First,

    /// <summary>Follows the one before.</summary>
    Next,

    /// <summary>Taken, but nothing is known of the time since the one before.</summary>
    AfterGap,

    /// <summary>Taken, on a clock that began anew.</summary>
    OnNewClock,

    /// <summary>Follows the one before, at which everything was ended.</summary>
    AfterEnd,
}
