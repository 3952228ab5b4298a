namespace Driveline.Advice;

/// <summary>What a remedy does to a margin.</summary>
public enum MarginEffect
{
    /// <summary>Not known.</summary>
    NotKnown = 0,

    /// <summary>It lowers the margin.</summary>
    Lowers,

    /// <summary>It leaves the margin alone.</summary>
    Unchanged,

    /// <summary>It raises the margin.</summary>
    Raises,
}
