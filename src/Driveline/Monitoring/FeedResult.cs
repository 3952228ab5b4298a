namespace Driveline.Monitoring;

/// <summary>How far a monitor came: the samples it took, and the events it wrote.</summary>
public readonly struct FeedResult
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
}
