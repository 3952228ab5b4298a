namespace Driveline.Fleet.Tests;

/// <summary>Alarms a sink was told, and what it does when told.</summary>
internal sealed class TestSink : IAlarmSink
{
    private readonly Lock turn = new();
    private readonly List<FleetAlarm> told = [];

    /// <summary>Called before alarms are taken; may throw or wait.</summary>
    public Func<IReadOnlyList<FleetAlarm>, Task> Before { get; set; } = _ => Task.CompletedTask;

    public FleetAlarm[] Told
    {
        get
        {
            lock (turn)
            {
                return [.. told];
            }
        }
    }

    public async Task DeliverAsync(IReadOnlyList<FleetAlarm> alarms, CancellationToken stopping)
    {
        await Before(alarms);
        lock (turn)
        {
            told.AddRange(alarms);
        }
    }
}
