using System.Net;
using Driveline.Fleet.Silos;
using Driveline.Fleet.Web;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Driveline.Fleet;

/// <summary>A silo in this process, with its page and endpoint when the options name a place for them.</summary>
/// <remarks>Without options: one silo, states in memory, gone with the process. Dispose it to stop it in order.</remarks>
public sealed class FleetHost : IAsyncDisposable
{
    private readonly IHost application;

    private FleetHost(IHost application, FleetOptions options)
    {
        this.application = application;
        Options = options;
        Grains = application.Services.GetRequiredService<IGrainFactory>();
        ILocalSiloDetails details = application.Services.GetRequiredService<ILocalSiloDetails>();
        Silo = details.SiloAddress.Endpoint;
        Name = details.Name;
        Url = (application as WebApplication)?.Urls.FirstOrDefault();
    }

    /// <summary>Its options.</summary>
    public FleetOptions Options { get; }

    /// <summary>The name of the silo.</summary>
    public string Name { get; }

    /// <summary>Where the page and the endpoint are; null without them.</summary>
    public string? Url { get; }

    /// <summary>The grains of the cluster.</summary>
    public IGrainFactory Grains { get; }

    /// <summary>Where the other silos of this process find it.</summary>
    internal IPEndPoint Silo { get; }

    /// <summary>Starts a silo.</summary>
    /// <param name="options">How it runs.</param>
    /// <param name="sink">Where its alarms go; null for the page alone.</param>
    /// <param name="stop">Breaks off the start.</param>
    /// <exception cref="ArgumentException">The options contradict each other; the message says how.</exception>
    public static Task<FleetHost> StartAsync(FleetOptions options, IAlarmSink? sink, CancellationToken stop) =>
        StartAsync(options, sink, null, null, stop);

    /// <summary>Starts one more silo in this process, in the cluster of a first one.</summary>
    /// <param name="first">The first one.</param>
    /// <param name="options">How it runs.</param>
    /// <param name="sink">Where its alarms go; null for the page alone.</param>
    /// <param name="stop">Breaks off the start.</param>
    public static Task<FleetHost> JoinAsync(FleetHost first, FleetOptions options, IAlarmSink? sink, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(first);
        return StartAsync(options, sink, first.Silo, null, stop);
    }

    /// <summary>A driveline by its name.</summary>
    public IDrivelineGrain Driveline(string name) => Grains.GetGrain<IDrivelineGrain>(name);

    /// <summary>Stops it in order: states are stored, and the other silos take over.</summary>
    public async ValueTask DisposeAsync()
    {
        await application.StopAsync();
        await ((IAsyncDisposable)application).DisposeAsync();
    }

    /// <summary>Starts a silo; the last word on its set-up is for tests.</summary>
    internal static async Task<FleetHost> StartAsync(
        FleetOptions options, IAlarmSink? sink, IPEndPoint? first, Action<ISiloBuilder>? more, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(options);
        IHost application = options.Url is null ? Silent(options, sink, first, more) : Heard(options, sink, first, more);
        try
        {
            await application.StartAsync(stop);
        }
        catch
        {
            await ((IAsyncDisposable)application).DisposeAsync();
            throw;
        }

        return new FleetHost(application, options);
    }

    private static IHost Silent(FleetOptions options, IAlarmSink? sink, IPEndPoint? first, Action<ISiloBuilder>? more)
    {
        HostApplicationBuilder builder = Host.CreateEmptyApplicationBuilder(new HostApplicationBuilderSettings());
        Set(builder, options, sink, first, more);
        return builder.Build();
    }

    private static WebApplication Heard(FleetOptions options, IAlarmSink? sink, IPEndPoint? first, Action<ISiloBuilder>? more)
    {
        WebApplicationBuilder builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        WebSetup.Configure(builder, options);
        Set(builder, options, sink, first, more);
        WebApplication application = builder.Build();
        IServiceProvider services = application.Services;
        WebSetup.Map(application, options, services.GetRequiredService<IGrainFactory>(), services.GetRequiredService<SiloDesk>());
        return application;
    }

    private static void Set(
        IHostApplicationBuilder builder, FleetOptions options, IAlarmSink? sink, IPEndPoint? first, Action<ISiloBuilder>? more)
    {
        if (sink is not null)
        {
            builder.Services.AddSingleton(sink);
        }

        if (options.LogsWarnings)
        {
            builder.Logging.SetMinimumLevel(LogLevel.Error).AddFilter("Driveline", LogLevel.Warning)
                .AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace);
        }

        builder.UseOrleans(silo =>
        {
            SiloSetup.Configure(silo, options, first);
            more?.Invoke(silo);
        });
    }
}
