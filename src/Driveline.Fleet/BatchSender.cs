using System.Diagnostics;

namespace Driveline.Fleet;

/// <summary>Sends the batches of one driveline, and sends again what is not acknowledged, through restarts of silos and stores.</summary>
/// <remarks>Not thread-safe; one for each driveline. Whoever sends over HTTP does the same with the answers of the endpoint.</remarks>
public sealed class BatchSender
{
    private static readonly TimeSpan FirstPause = TimeSpan.FromMilliseconds(20);
    private static readonly TimeSpan LongestPause = TimeSpan.FromSeconds(1);

    // A call to a silo that was killed is never answered; the batch may be sent again while the first sending is still on its way.
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(3);

    private readonly IDrivelineGrain driveline;
    private readonly Action<TimeSpan>? acknowledged;

    /// <summary>A sender.</summary>
    /// <param name="driveline">The driveline.</param>
    /// <param name="acknowledged">Hears how long each acknowledgement took, from the last time the batch was sent; null for nobody.</param>
    public BatchSender(IDrivelineGrain driveline, Action<TimeSpan>? acknowledged)
    {
        this.driveline = driveline;
        this.acknowledged = acknowledged;
    }

    /// <summary>Batches that were sent and not acknowledged, and so sent again.</summary>
    public long SentAgain { get; private set; }

    /// <summary>Sends batches that follow one another at once; null when all are acknowledged, else why one was refused for good.</summary>
    /// <param name="batches">At most 16 batches in their order.</param>
    /// <param name="stop">Breaks it off.</param>
    /// <exception cref="FleetStateException">The stored state cannot be read.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public async Task<FleetRefusal?> SendAsync(IReadOnlyList<TelemetryBatch> batches, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(batches);
        TelemetryBatch[] open = [.. batches];
        TimeSpan pause = FirstPause;
        while (open.Length > 0)
        {
            stop.ThrowIfCancellationRequested();
            BatchAnswer?[] answers = await Task.WhenAll(open.Select(TryAsync)).WaitAsync(stop);
            if (answers.FirstOrDefault(a => a?.Outcome == BatchOutcome.Refused) is { } refused)
            {
                return refused.Refusal;
            }

            long through = answers.Max(a => a?.AcknowledgedThrough ?? 0);
            TelemetryBatch[] left = [.. open.Where((b, k) => b.Sequence > through && answers[k]?.IsAcknowledged != true)];
            SentAgain += left.Length;
            if (left.Length < open.Length)
            {
                pause = FirstPause;
            }
            else
            {
                await Task.Delay(pause, stop);
                pause = pause * 2 < LongestPause ? pause * 2 : LongestPause;
            }

            open = left;
        }

        return null;
    }

    // Whatever goes wrong on the way, the batch is sent again.
    private async Task<BatchAnswer?> TryAsync(TelemetryBatch batch)
    {
        long began = Stopwatch.GetTimestamp();
        try
        {
            BatchAnswer answer = await driveline.TakeAsync(batch).WaitAsync(LongestWait);
            if (answer.IsAcknowledged)
            {
                acknowledged?.Invoke(Stopwatch.GetElapsedTime(began));
            }

            return answer;
        }
        catch (Exception failed) when (failed is not (FleetStateException or OutOfMemoryException))
        {
            return null;
        }
    }
}
