using System.Globalization;
using Driveline.Fleet.Studies;
using Driveline.Sweeps;

namespace Driveline.Fleet;

/// <summary>Runs a study on a cluster: as shards, each on whatever silo has room, put together into one file.</summary>
/// <remarks>
/// The bytes are those of a run on one machine of the same kind of processor. A shard whose silo dies is asked for again and begins anew on
/// another one. Shards gather beside the file as they come; the file is there only when it is whole.
/// </remarks>
public static class FleetStudy
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(500);

    /// <summary>Runs a study into a file that ends in .csv or .parquet.</summary>
    /// <param name="grains">The grains of the cluster, such as <see cref="FleetHost.Grains"/>.</param>
    /// <param name="study">The study file; its case stands in it or beside it.</param>
    /// <param name="path">The file.</param>
    /// <param name="shards">How many shards it is cut into; each must fit into a message, 50 MB.</param>
    /// <param name="atOnce">How many are computed at once; about as many as the cluster has processors.</param>
    /// <param name="stop">Breaks it off.</param>
    /// <returns>Number of rows.</returns>
    /// <exception cref="ArgumentException">Something is wrong with the study, the file or the numbers; the message says what.</exception>
    /// <exception cref="StudyFileException">The file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static async Task<long> RunToAsync(
        IGrainFactory grains, string study, string path, int shards, int atOnce, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(grains);
        ArgumentOutOfRangeException.ThrowIfLessThan(shards, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(atOnce, 1);
        string text = StudyShard.TextOf(study);
        string run = Guid.NewGuid().ToString("N");
        string ending = Path.GetExtension(path);
        string[] files = [.. Enumerable.Range(1, shards)
            .Select(i => string.Create(CultureInfo.InvariantCulture, $"{path}.{run}.{i}{ending}"))];
        try
        {
            var room = new ParallelOptions { MaxDegreeOfParallelism = atOnce, CancellationToken = stop };
            await Parallel.ForEachAsync(Enumerable.Range(1, shards), room, async (shard, token) =>
            {
                string key = string.Create(CultureInfo.InvariantCulture, $"{run}:{shard}");
                byte[] bytes = await ComputedAsync(grains, key, new ShardOrder(text, ending, shard, shards), token);
                await File.WriteAllBytesAsync(files[shard - 1], bytes, token);
            });
            return Sweep.Merge(files, path, stop);
        }
        finally
        {
            Array.ForEach(files, File.Delete);
        }
    }

    private static async Task<byte[]> ComputedAsync(IGrainFactory grains, string key, ShardOrder order, CancellationToken stop)
    {
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            IStudyShardGrain grain = grains.GetGrain<IStudyShardGrain>(key);
            try
            {
                ShardAnswer answer = await grain.AskAsync(order);
                if (answer.Failure is { } failure)
                {
                    throw new ArgumentException(failure, nameof(order));
                }

                if (answer.Bytes is { } bytes)
                {
                    await grain.ForgetAsync();
                    return bytes;
                }
            }
            catch (Exception lost) when (lost is OrleansException or TimeoutException or IOException)
            {
                // Its silo is gone or going: the next question finds another one.
                await Task.Delay(Pause, stop);
            }
        }
    }
}
