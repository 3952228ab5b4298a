namespace Driveline.Protection;

/// <summary>One thing to measure or look up next, and why.</summary>
public sealed class Measurement
{
    internal Measurement(string code, string? subject, string reason)
    {
        Code = code;
        Subject = subject;
        Reason = reason;
    }

    /// <summary>Stable code, e.g. "measure.hubTurn".</summary>
    public string Code { get; }

    /// <summary>The part or device it is about; null when it is about the whole machine.</summary>
    public string? Subject { get; }

    /// <summary>Code of the finding it would settle.</summary>
    public string Reason { get; }

    /// <inheritdoc/>
    public override string ToString() => Subject is null ? Code : Code + " (" + Subject + ")";
}
