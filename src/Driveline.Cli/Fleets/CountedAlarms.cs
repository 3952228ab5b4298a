using Driveline.Fleet;

namespace Driveline.Cli.Fleets;

/// <summary>Counts the alarms of this process, each once, and hands them on.</summary>
internal sealed class CountedAlarms(IAlarmSink? next) : IAlarmSink
{
    private readonly SeenAlarms seen = new();
    private long count;

    public long Count => Interlocked.Read(ref count);

    public async Task DeliverAsync(IReadOnlyList<FleetAlarm> alarms, CancellationToken stopping)
    {
        if (next is not null)
        {
            await next.DeliverAsync(alarms, stopping);
        }

        Interlocked.Add(ref count, alarms.Count(a => seen.IsNew(a.Id)));
    }
}
