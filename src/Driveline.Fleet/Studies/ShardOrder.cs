namespace Driveline.Fleet.Studies;

/// <summary>A shard of a study to be run. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.ShardOrder")]
internal sealed class ShardOrder
{
    public ShardOrder(string study, string ending, int shard, int shards)
    {
        Study = study;
        Ending = ending;
        Shard = shard;
        Shards = shards;
    }

    /// <summary>The text of the study, with its case in it.</summary>
    [Id(0)]
    public string Study { get; }

    /// <summary>".csv" or ".parquet".</summary>
    [Id(1)]
    public string Ending { get; }

    /// <summary>The shard, from 1.</summary>
    [Id(2)]
    public int Shard { get; }

    /// <summary>How many shards there are.</summary>
    [Id(3)]
    public int Shards { get; }
}
