using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Hosting;
using Orleans.Configuration;
using StackExchange.Redis;

namespace Driveline.Fleet.Silos;

/// <summary>Sets up a silo of Orleans as the options say.</summary>
internal static class SiloSetup
{
    /// <summary>The name of the store of states.</summary>
    public const string Store = "fleet";

    /// <summary>Sets up a silo.</summary>
    /// <param name="silo">The silo.</param>
    /// <param name="options">The options.</param>
    /// <param name="first">The first silo of this process when there is one without Redis; null for this one itself.</param>
    public static void Configure(ISiloBuilder silo, FleetOptions options, IPEndPoint? first)
    {
        IPAddress address = options.Address is { } text ? IPAddress.Parse(text) : IPAddress.Loopback;
        int siloPort = options.SiloPort > 0 ? options.SiloPort : FreePort();
        int gatewayPort = options.GatewayPort > 0 ? options.GatewayPort : FreePort();
        silo.Services.AddSingleton(options).AddSingleton<SiloDesk>().AddSingleton<CaseSettings>().AddHostedService<SiloReporter>();
        silo.Services.TryAddSingleton<IAlarmSink, LostAlarms>();
        silo.Configure<ClusterOptions>(o => o.ClusterId = o.ServiceId = options.Cluster);
        silo.Configure<GrainCollectionOptions>(o => o.CollectionAge = options.IdleAfter);
        silo.Configure<SiloOptions>(o => o.SiloName = FormattableString.Invariant($"{Environment.MachineName}:{siloPort}"));
        silo.Configure<SiloMessagingOptions>(o => o.ResponseTimeout = TimeSpan.FromSeconds(10));
        if (options.Redis is null)
        {
            silo.UseLocalhostClustering(siloPort, gatewayPort, first, options.Cluster, options.Cluster)
                .AddMemoryGrainStorage(Store, o => o.GrainStorageSerializer = new StoredBytesSerializer())
                .UseInMemoryReminderService();
        }
        else
        {
            UseRedis(silo, ConfigurationOptions.Parse(options.Redis));
            silo.ConfigureEndpoints(address, siloPort, gatewayPort, listenOnAnyHostAddress: options.Address is not null);
        }

        // A silo that was killed is found out in 2 s, by one vote: batches wait meanwhile, none is lost.
        silo.Configure<ClusterMembershipOptions>(o =>
        {
            o.ProbeTimeout = TimeSpan.FromSeconds(1);
            o.NumMissedProbesLimit = 2;
            o.NumVotesForDeathDeclaration = 1;
        });
    }

    /// <summary>A port of loopback that nobody listens on now.</summary>
    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static void UseRedis(ISiloBuilder silo, ConfigurationOptions redis)
    {
        // A store that restarts is waited for, not given up.
        redis.AbortOnConnectFail = false;
        redis.ConnectRetry = 5;
        silo.UseRedisClustering(o => o.ConfigurationOptions = redis)
            .AddRedisGrainStorage(Store, o =>
            {
                o.ConfigurationOptions = redis;
                o.DeleteStateOnClear = true;
                o.GrainStorageSerializer = new StoredBytesSerializer();
            })
            .UseRedisReminderService(o => o.ConfigurationOptions = redis);
    }
}
