using System.Globalization;
using System.Security.Cryptography;
using Xunit.Abstractions;

namespace Driveline.Web.Tests;

public class LoadTests(WebHost host, ITestOutputHelper output) : IClassFixture<WebHost>
{
    private const int Clients = 8;

    // How many times as many requests: DRIVELINE_LOAD=20 to measure, one to see that answers stay alike.
    private static int Times => int.Parse(Environment.GetEnvironmentVariable("DRIVELINE_LOAD") ?? "1", CultureInfo.InvariantCulture);

    [Fact]
    public async Task Assess_FromManyClients_AnswersEachAlike()
    {
        byte[] body = WebHost.Case("thornbeck-bolt-right");
        using HttpResponseMessage first = await host.Post("/api/assess", body);
        byte[] wanted = SHA256.HashData(await first.Content.ReadAsByteArrayAsync());
        _ = await LoadLoop.Run(host, "/api/assess", body, Clients, 50 * Times);
        (int good, IReadOnlyList<double> times, double seconds) = await LoadLoop.Run(host, "/api/assess", body, Clients, 100 * Times);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{times.Count / seconds:F0} requests/s, median {times[times.Count / 2]:F1} ms, p99 {times[times.Count * 99 / 100]:F1} ms, "
            + $"{Environment.WorkingSet >> 20} MiB"));
        Assert.Equal(Clients * 100 * Times, good);
        using HttpResponseMessage last = await host.Post("/api/assess", body);
        Assert.Equal(wanted, SHA256.HashData(await last.Content.ReadAsByteArrayAsync()));
    }
}
