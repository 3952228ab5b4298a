using System.Net;
using System.Threading.RateLimiting;
using Driveline.Fleet.Silos;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Driveline.Fleet.Web;

/// <summary>Sets up the page and the endpoint as the options say.</summary>
internal static class WebSetup
{
    private const int MostRequests = 1000;
    private const int Burst = 4;

    /// <summary>Sets up a host before it is built.</summary>
    /// <exception cref="ArgumentException">It would listen beyond loopback without a key.</exception>
    public static void Configure(WebApplicationBuilder builder, FleetOptions options)
    {
        Uri place = PlaceOf(options.Url!);
        if (!IsLoopback(place) && string.IsNullOrEmpty(options.ApiKey))
        {
            throw new ArgumentException("ApiKey must be set where the endpoint listens beyond loopback; Url is " + options.Url + ".");
        }

        builder.WebHost.UseKestrelCore().UseUrls(place.GetLeftPart(UriPartial.Authority)).ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = options.MostBodyBytes;
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        });
        builder.Services.AddRoutingCore().AddRateLimiter(limits =>
        {
            limits.GlobalLimiter = PartitionedRateLimiter.CreateChained(Room(), EachDriveline(options.RequestsPerSecond));
            limits.OnRejected = (rejected, stop) => new ValueTask(FleetJson.RefuseAsync(
                rejected.HttpContext,
                StatusCodes.Status429TooManyRequests,
                new FleetRefusal("requests", Limit(options.RequestsPerSecond), "more")));
        });
    }

    /// <summary>Adds the page and the endpoint.</summary>
    public static void Map(WebApplication application, FleetOptions options, IGrainFactory grains, SiloDesk desk)
    {
        var door = new FleetDoor(options.ApiKey, IsLoopback(PlaceOf(options.Url!)));
        var drivelines = new DrivelineEndpoint(grains, options.MostBodyBytes);
        application.UseRouting();
        application.Use(door.PassAsync);
        application.UseRateLimiter();
        application.MapGet("/health", context => context.Response.WriteAsync("ok"));
        application.MapPut("/drivelines/{name}", drivelines.RegisterAsync);
        application.MapGet("/drivelines/{name}", drivelines.StatusAsync);
        application.MapDelete("/drivelines/{name}", drivelines.RemoveAsync);
        application.MapPost("/drivelines/{name}/batches", drivelines.TakeAsync);
        application.MapGet("/", context => ShowAsync(context, options, grains, desk));
    }

    private static Uri PlaceOf(string url) =>
        Uri.TryCreate(url.Replace("//*", "//0.0.0.0", StringComparison.Ordinal), UriKind.Absolute, out Uri? place) && place.Scheme == "http"
            ? place
            : throw new ArgumentException("Url must be like http://127.0.0.1:8080; got " + url + ".");

    private static bool IsLoopback(Uri place) => place.Host == "localhost"
        || (IPAddress.TryParse(place.Host.Trim('[', ']'), out IPAddress? address) && IPAddress.IsLoopback(address));

    private static string Limit(int perSecond) => FormattableString.Invariant($"at most {perSecond} a second of a driveline");

    private static PartitionedRateLimiter<HttpContext> Room() => PartitionedRateLimiter.Create<HttpContext, int>(_ =>
        RateLimitPartition.GetConcurrencyLimiter(0, _ => new ConcurrencyLimiterOptions { PermitLimit = MostRequests, QueueLimit = 0 }));

    private static PartitionedRateLimiter<HttpContext> EachDriveline(int perSecond) => PartitionedRateLimiter.Create<HttpContext, string>(
        context => context.Request.RouteValues["name"] is string name
            ? RateLimitPartition.GetTokenBucketLimiter(name, _ => new TokenBucketRateLimiterOptions
            {
                TokenLimit = Burst * perSecond,
                TokensPerPeriod = perSecond,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                QueueLimit = 0,
            })
            : RateLimitPartition.GetNoLimiter(string.Empty));

    private static async Task ShowAsync(HttpContext context, FleetOptions options, IGrainFactory grains, SiloDesk desk)
    {
        SiloFigures[] silos = await grains.GetGrain<IFleetBoardGrain>(0).ReadAsync();
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'self'";
        context.Response.Headers.XContentTypeOptions = "nosniff";
        await context.Response.WriteAsync(FleetPage.Of(
            options.Cluster, silos, DateTime.UtcNow, desk.Failures, isRefreshed: context.Request.Query.ContainsKey("refresh")));
    }
}
