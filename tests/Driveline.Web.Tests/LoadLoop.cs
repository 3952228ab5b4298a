using System.Collections.Concurrent;
using System.Diagnostics;

namespace Driveline.Web.Tests;

/// <summary>Posts one case again and again from several clients; tells what came back and how long it took.</summary>
internal static class LoadLoop
{
    public static async Task<(int Good, IReadOnlyList<double> Milliseconds, double Seconds)> Run(
        WebHost host, string path, byte[] body, int clients, int each)
    {
        var times = new ConcurrentBag<double>();
        var clock = Stopwatch.StartNew();
        int good = 0;
        await Task.WhenAll(Enumerable.Range(0, clients).Select(client => Task.Run(async () =>
        {
            for (int i = 0; i < each; i++)
            {
                long start = Stopwatch.GetTimestamp();
                using HttpResponseMessage answer = await host.Post(path, body);
                _ = await answer.Content.ReadAsByteArrayAsync();
                times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
                if (answer.IsSuccessStatusCode)
                {
                    Interlocked.Increment(ref good);
                }
            }
        })));
        return (good, [.. times.Order()], clock.Elapsed.TotalSeconds);
    }
}
