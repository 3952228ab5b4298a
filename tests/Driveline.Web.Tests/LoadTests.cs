using System.Globalization;
using System.Security.Cryptography;
using Xunit.Abstractions;

namespace Driveline.Web.Tests;

public class LoadTests(WebHost host, ITestOutputHelper output) : IClassFixture<WebHost>
{
    [Fact]
    public async Task Assess_FromManyClients_AnswersEachAlike()
    {
        byte[] body = WebHost.Case("thornbeck-bolt-right");
        using HttpResponseMessage first = await host.Post("/api/assess", body);
        byte[] wanted = SHA256.HashData(await first.Content.ReadAsByteArrayAsync());
        (int good, IReadOnlyList<double> times, double seconds) = await LoadLoop.Run(host, "/api/assess", body, 8, 100);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{times.Count / seconds:F0} requests/s, median {times[times.Count / 2]:F1} ms, p99 {times[times.Count * 99 / 100]:F1} ms"));
        Assert.Equal(800, good);
        using HttpResponseMessage last = await host.Post("/api/assess", body);
        Assert.Equal(wanted, SHA256.HashData(await last.Content.ReadAsByteArrayAsync()));
    }
}
