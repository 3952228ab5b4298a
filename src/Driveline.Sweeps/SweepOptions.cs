using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>How a study is run. Nothing here changes its numbers. Immutable.</summary>
public sealed class SweepOptions
{
    private SweepOptions(int threads, int shard, int shards, bool isResumed, Action<StudyProgress>? progress)
    {
        Threads = threads;
        Shard = shard;
        Shards = shards;
        IsResumed = isResumed;
        Progress = progress;
    }

    /// <summary>A thread a processor, the whole study, from the start.</summary>
    public static SweepOptions Default { get; } = new(Environment.ProcessorCount, 1, 1, false, null);

    /// <summary>Number of threads.</summary>
    public int Threads { get; }

    /// <summary>The shard that is run, from 1.</summary>
    public int Shard { get; }

    /// <summary>Number of shards; 1 for the whole study.</summary>
    public int Shards { get; }

    /// <summary>True to go on from the partial file that an earlier run left.</summary>
    public bool IsResumed { get; }

    /// <summary>Told at most four times a second, on one of the threads; null for none.</summary>
    public Action<StudyProgress>? Progress { get; }

    /// <summary>The same with so many threads.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not from 1 to 1024.</exception>
    public SweepOptions WithThreads(int threads) =>
        new(Guard.Within(threads, 1, 1024, "Threads", nameof(threads)), Shard, Shards, IsResumed, Progress);

    /// <summary>The same for one of several shards.</summary>
    /// <param name="shard">From 1.</param>
    /// <param name="shards">How many there are; at most 1,000,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such shard.</exception>
    public SweepOptions WithShard(int shard, int shards)
    {
        Guard.Within(shards, 1, 1_000_000, "Shards", nameof(shards));
        return new(Threads, Guard.Within(shard, 1, shards, "Shard", nameof(shard)), shards, IsResumed, Progress);
    }

    /// <summary>The same, going on from a partial file or not.</summary>
    public SweepOptions WithResume(bool isResumed) => new(Threads, Shard, Shards, isResumed, Progress);

    /// <summary>The same, with a listener.</summary>
    public SweepOptions WithProgress(Action<StudyProgress>? progress) => new(Threads, Shard, Shards, IsResumed, progress);
}
