namespace Driveline.Monitoring;

/// <summary>How far a monitor came: the samples it took, and the events it wrote.</summary>
public readonly struct FeedResult : IEquatable<FeedResult>
{
    internal FeedResult(int samplesTaken, int eventsWritten)
    {
        SamplesTaken = samplesTaken;
        EventsWritten = eventsWritten;
    }

    /// <summary>Samples taken from the front; fewer than given when the room for events was used up: feed the rest again.</summary>
    public int SamplesTaken { get; }

    /// <summary>Events written to the front of the span.</summary>
    public int EventsWritten { get; }

    /// <summary>Whether two results are the same.</summary>
    public static bool operator ==(FeedResult left, FeedResult right) => left.Equals(right);

    /// <summary>Whether two results differ.</summary>
    public static bool operator !=(FeedResult left, FeedResult right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(FeedResult other) => SamplesTaken == other.SamplesTaken && EventsWritten == other.EventsWritten;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is FeedResult other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (SamplesTaken * 397) ^ EventsWritten;

    /// <summary>Both counts in one line of English.</summary>
    public override string ToString() => FormattableString.Invariant($"{SamplesTaken} samples taken, {EventsWritten} events written");
}
