using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Orleans.Configuration;
using StackExchange.Redis;

namespace Driveline.Fleet;

/// <summary>Reaches the drivelines of a cluster from a process that is no silo of it.</summary>
public sealed class FleetClient : IAsyncDisposable
{
    private readonly IHost host;

    private FleetClient(IHost host)
    {
        this.host = host;
        Grains = host.Services.GetRequiredService<IGrainFactory>();
    }

    /// <summary>The grains of the cluster.</summary>
    public IGrainFactory Grains { get; }

    /// <summary>Finds the cluster in Redis; waits while no silo of it runs.</summary>
    /// <param name="options">Redis and the name of the cluster; the rest is not looked at.</param>
    /// <param name="stop">Breaks off the wait.</param>
    /// <exception cref="ArgumentException">No Redis is stated.</exception>
    public static async Task<FleetClient> ConnectAsync(FleetOptions options, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (options.Redis is not { } redis)
        {
            throw new ArgumentException("Redis must be stated for a client; a fleet in memory has none.", nameof(options));
        }

        ConfigurationOptions connection = ConfigurationOptions.Parse(redis);
        connection.AbortOnConnectFail = false;
        HostApplicationBuilder builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings());
        builder.UseOrleansClient(client => client
            .Configure<ClusterOptions>(o => o.ClusterId = o.ServiceId = options.Cluster)
            .Configure<GatewayOptions>(o => o.GatewayListRefreshPeriod = TimeSpan.FromSeconds(2))
            .Configure<ClientMessagingOptions>(o => o.ResponseTimeout = TimeSpan.FromSeconds(10))
            .UseRedisClustering(o => o.ConfigurationOptions = connection)
            .UseConnectionRetryFilter(async (_, cancelled) =>
            {
                await Task.Delay(TimeSpan.FromSeconds(0.5), cancelled);
                return true;
            }));
        IHost host = builder.Build();
        try
        {
            await host.StartAsync(stop);
            return new FleetClient(host);
        }
        catch
        {
            await ((IAsyncDisposable)host).DisposeAsync();
            throw;
        }
    }

    /// <summary>A driveline by its name.</summary>
    public IDrivelineGrain Driveline(string name) => Grains.GetGrain<IDrivelineGrain>(name);

    /// <summary>Leaves the cluster.</summary>
    public async ValueTask DisposeAsync()
    {
        await host.StopAsync();
        await ((IAsyncDisposable)host).DisposeAsync();
    }
}
