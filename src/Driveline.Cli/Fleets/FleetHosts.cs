using Driveline.Fleet;

namespace Driveline.Cli.Fleets;

/// <summary>The silos of this process; stopped in the order they came.</summary>
internal sealed class FleetHosts : IAsyncDisposable
{
    private readonly List<FleetHost> hosts = [];

    /// <summary>Starts some; the first one has the page.</summary>
    public async Task<FleetHost> StartAsync(FleetOptions options, int count, IAlarmSink sink, CancellationToken stop)
    {
        hosts.Add(await FleetHost.StartAsync(options, sink, stop));
        while (hosts.Count < count)
        {
            hosts.Add(await FleetHost.JoinAsync(hosts[0], options.WithoutHttp().WithPorts(0, 0), sink, stop));
        }

        return hosts[0];
    }

    public async ValueTask DisposeAsync()
    {
        // The first one keeps the members of a cluster in memory, so it goes last.
        for (int k = hosts.Count - 1; k >= 0; k--)
        {
            await hosts[k].DisposeAsync();
        }
    }
}
