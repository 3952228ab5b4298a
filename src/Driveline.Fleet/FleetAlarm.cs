using Driveline.Monitoring;

namespace Driveline.Fleet;

/// <summary>Something that the monitor of a driveline saw, all but engagements, which are no alarm. Immutable.</summary>
public sealed class FleetAlarm
{
    internal FleetAlarm(AlarmId id, MonitorEvent seen)
    {
        Id = id;
        Event = seen;
    }

    /// <summary>Which alarm it is; told again, it has the same one.</summary>
    public AlarmId Id { get; }

    /// <summary>What was seen.</summary>
    public MonitorEvent Event { get; }

    /// <inheritdoc/>
    public override string ToString() => Id + ": " + Event;
}
