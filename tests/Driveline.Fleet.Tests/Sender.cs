namespace Driveline.Fleet.Tests;

/// <summary>Sends the batches of a driveline until all are acknowledged.</summary>
internal static class Sender
{
    /// <summary>Sends some at once, again and again; how many sendings were not acknowledged.</summary>
    public static async Task<int> SendAsync(Func<IDrivelineGrain> driveline, TelemetryBatch[] batches, int atOnce, TimeSpan atMost)
    {
        int again = 0;
        long through = 0;
        DateTime end = DateTime.UtcNow + atMost;
        while (through < batches.Length)
        {
            Assert.True(DateTime.UtcNow < end, "only " + through + " of " + batches.Length + " were acknowledged");
            BatchAnswer?[] answers = await Task.WhenAll(batches.Skip((int)through).Take(atOnce).Select(b => TryAsync(driveline(), b)));
            again += answers.Count(a => a?.IsAcknowledged != true);
            through = Math.Max(through, answers.Max(a => a?.AcknowledgedThrough ?? 0));
            Assert.DoesNotContain(answers, a => a?.Outcome == BatchOutcome.Refused);
            if (answers.All(a => a?.IsAcknowledged != true))
            {
                await Task.Delay(20);
            }
        }

        return again;
    }

    private static async Task<BatchAnswer?> TryAsync(IDrivelineGrain driveline, TelemetryBatch batch)
    {
        try
        {
            return await driveline.TakeAsync(batch);
        }
        catch (Exception failed) when (failed is OrleansException or TimeoutException or IOException)
        {
            return null;
        }
    }
}
