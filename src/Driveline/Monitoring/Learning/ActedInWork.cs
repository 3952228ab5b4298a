namespace Driveline.Monitoring;

/// <summary>Whether the protection has acted in normal work, with nothing struck and nothing plugged.</summary>
public enum ActedInWork
{
    /// <summary>Nobody said: a trip or slip may have cut a peak of work, so that nobody knows how high it would have been.</summary>
    NotKnown = 0,

    /// <summary>It never has: whatever it did was at a strike, a plug or an engagement.</summary>
    Never,
}
