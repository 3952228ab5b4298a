using Driveline.Sweeps;

namespace Driveline.Fleet.Studies;

/// <inheritdoc cref="IStudyShardGrain"/>
/// <remarks>It holds nothing that must outlive it: the same shard gives the same bytes on any silo.</remarks>
internal sealed class StudyShardGrain : Grain, IStudyShardGrain, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly CancellationTokenSource stop = new();
    private readonly CancellationToken stopped;
    private Task<byte[]>? run;

    public StudyShardGrain() => stopped = stop.Token;

    public async Task<ShardAnswer> AskAsync(ShardOrder order)
    {
        // On threads of its own: a silo goes on answering meanwhile.
        run ??= Task.Factory.StartNew(
            () => StudyShard.Run(
                order.Study, order.Ending, SweepOptions.Default.WithThreads(1).WithShard(order.Shard, order.Shards), stopped),
            stopped, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        await Task.WhenAny(run, Task.Delay(Patience));
        return run.IsCompletedSuccessfully ? new ShardAnswer(await run, null)
            : run is { IsFaulted: true, Exception.InnerException: ArgumentException wrong } ? new ShardAnswer(null, wrong.Message)
            : run.IsCompleted ? Again()
            : new ShardAnswer(null, null);
    }

    public Task ForgetAsync()
    {
        DeactivateOnIdle();
        return Task.CompletedTask;
    }

    public void Dispose()
    {
        stop.Cancel();
        stop.Dispose();
    }

    // A full disk or the like: the next who asks begins anew, on another silo perhaps.
    private ShardAnswer Again()
    {
        run = null;
        DeactivateOnIdle();
        return new ShardAnswer(null, null);
    }
}
