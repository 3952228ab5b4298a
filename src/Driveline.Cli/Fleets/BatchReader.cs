using Driveline.Cli.Telemetry;
using Driveline.Fleet;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Cli.Fleets;

/// <summary>Cuts a log into batches, numbered from 1; the last one ends it.</summary>
internal sealed class BatchReader
{
    private readonly ITelemetry log;
    private readonly TorqueSample[] room;
    private readonly Queue<TorqueSample> ahead = new();
    private long sequence;
    private bool hasEnded;

    public BatchReader(ITelemetry log, int samplesEach)
    {
        this.log = log;
        room = new TorqueSample[samplesEach];
        while (ahead.Count < WatchRun.SamplesForPeriod && log.TryNext(out TorqueSample sample))
        {
            ahead.Enqueue(sample);
        }

        Period = Duration.FromSeconds(WatchRun.PeriodOf([.. ahead]));
    }

    /// <summary>Time from sample to sample, found as watch finds it.</summary>
    public Duration Period { get; }

    /// <summary>The next batches; none at the end.</summary>
    public List<TelemetryBatch> Next(int count)
    {
        var batches = new List<TelemetryBatch>();
        while (batches.Count < count && !hasEnded)
        {
            int taken = 0;
            while (taken < room.Length && TryNext(out TorqueSample sample))
            {
                room[taken++] = sample;
            }

            var batch = TelemetryBatch.Of(++sequence, room.AsSpan(0, taken));
            hasEnded = taken < room.Length;
            batches.Add(hasEnded ? batch.WithEnd() : batch);
        }

        return batches;
    }

    private bool TryNext(out TorqueSample sample) => ahead.TryDequeue(out sample) || log.TryNext(out sample);
}
