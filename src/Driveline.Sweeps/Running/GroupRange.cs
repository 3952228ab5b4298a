namespace Driveline.Sweeps.Running;

/// <summary>The groups of a shard: consecutive, cut as evenly as whole groups allow.</summary>
internal readonly record struct GroupRange(long First, long End)
{
    /// <summary>Shard i of n, from 1.</summary>
    public static GroupRange Of(long groups, int shard, int shards) =>
        new(Cut(groups, shard - 1, shards), Cut(groups, shard, shards));

    private static long Cut(long groups, int at, int shards) => (long)((Int128)groups * at / shards);
}
