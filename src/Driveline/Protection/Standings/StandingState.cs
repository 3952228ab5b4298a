namespace Driveline.Protection;

/// <summary>Whether a machine may be used as it is, in one word.</summary>
public enum StandingState
{
    /// <summary>Nobody can say: it counts as not protected.</summary>
    NotKnown = 0,

    /// <summary>It must not be used until what is named has been put right.</summary>
    Stop,

    /// <summary>It may be used with care; what is named is to be seen to.</summary>
    WithCare,

    /// <summary>It may be used as it is. Never said because nobody has looked.</summary>
    GoOn,
}
