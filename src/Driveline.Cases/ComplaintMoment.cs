namespace Driveline.Cases;

/// <summary>When it happens.</summary>
public enum ComplaintMoment
{
    /// <summary>Not stated.</summary>
    NotKnown = 0,

    /// <summary>When the PTO is engaged.</summary>
    Engaging,

    /// <summary>When starting with material inside.</summary>
    StartingLoaded,

    /// <summary>In even work.</summary>
    SteadyWork,

    /// <summary>In a plug, a slug or a thick stand.</summary>
    Overload,

    /// <summary>When something solid is struck.</summary>
    Striking,

    /// <summary>In a turn or when lifting the implement.</summary>
    Turning,

    /// <summary>With no pattern.</summary>
    AnyTime,
}
