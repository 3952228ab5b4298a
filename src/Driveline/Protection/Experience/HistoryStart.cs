namespace Driveline.Protection;

/// <summary>What opened the hours over which somebody counted how often the protection acted.</summary>
/// <remarks>
/// A stretch picked afterwards because nothing broke in it proves nothing, so only a window that something opened counts.
/// </remarks>
public enum HistoryStart
{
    /// <summary>Nobody says how the window was picked.</summary>
    NotKnown = 0,

    /// <summary>The present bolt or setting was fitted; a window that opens at a break, with its new bolt, is such a one.</summary>
    Fitting,

    /// <summary>A season of work began.</summary>
    Season,
}
