namespace Driveline.Fleet.Silos;

/// <summary>The sink of a host that brings none: alarms are shown on the page and go nowhere else.</summary>
internal sealed class LostAlarms : IAlarmSink
{
    public Task DeliverAsync(IReadOnlyList<FleetAlarm> alarms, CancellationToken stopping) => Task.CompletedTask;
}
