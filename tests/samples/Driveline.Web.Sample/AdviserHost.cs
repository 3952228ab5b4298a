using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.Timeouts;

namespace Driveline.Web.Sample;

/// <summary>
/// The host: what comes in is bounded in size, in time and in number, and nothing of it is kept. Settings: "rate" (requests a second and
/// address), "seconds" (for one request).
/// </summary>
public static class AdviserHost
{
    /// <summary>Most bytes of a body: many times the largest case.</summary>
    public const int MostBytes = 256 * 1024;

    /// <summary>The host, ready to run.</summary>
    public static WebApplication Build(string[] arguments)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(arguments);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Limits.MaxRequestBodySize = MostBytes;
            kestrel.AddServerHeader = false;
        });
        int rate = builder.Configuration.GetValue("rate", 50);
        double seconds = builder.Configuration.GetValue("seconds", 10.0);
        builder.Services.AddProblemDetails();
        builder.Services.AddRequestTimeouts(o => o.DefaultPolicy = new RequestTimeoutPolicy
        {
            Timeout = TimeSpan.FromSeconds(seconds),
            TimeoutStatusCode = StatusCodes.Status503ServiceUnavailable,
        });
        builder.Services.AddRateLimiter(o =>
        {
            o.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            o.OnRejected = (context, _) =>
            {
                context.HttpContext.Response.Headers.RetryAfter = 1.ToString(CultureInfo.InvariantCulture);
                return ValueTask.CompletedTask;
            };
            o.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context => RateLimitPartition.GetTokenBucketLimiter(
                context.Connection.RemoteIpAddress?.ToString() ?? string.Empty,
                _ => new TokenBucketRateLimiterOptions
                {
                    TokenLimit = 2 * rate,
                    TokensPerPeriod = rate,
                    ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                }));
        });

        WebApplication app = builder.Build();
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            StatusCodeSelector = fault => (fault as BadHttpRequestException)?.StatusCode ?? StatusCodes.Status500InternalServerError,
        });
        app.UseStatusCodePages();
        app.UseRateLimiter();
        app.UseRequestTimeouts();
        app.Use((context, next) =>
        {
            context.Response.Headers.ContentSecurityPolicy =
                "default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:; form-action 'self'; base-uri 'none'; "
                + "frame-ancestors 'none'";
            context.Response.Headers.XContentTypeOptions = "nosniff";
            context.Response.Headers["Referrer-Policy"] = "no-referrer";
            context.Response.Headers.CacheControl = "no-store";
            return next(context);
        });
        CaseApi.Map(app);
        AdviserPages.Map(app);
        return app;
    }
}
