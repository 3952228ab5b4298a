namespace Driveline.Fleet.Studies;

/// <summary>Computes a shard of a study; its key names the run and the shard.</summary>
[Alias("Driveline.Fleet.IStudyShardGrain")]
internal interface IStudyShardGrain : IGrainWithStringKey
{
    /// <summary>How the shard stands; it is begun when nobody has begun it on this silo, so that a retry is to ask again.</summary>
    /// <param name="order">The shard.</param>
    [Alias("Ask")]
    Task<ShardAnswer> AskAsync(ShardOrder order);

    /// <summary>Stops it and forgets what was computed.</summary>
    [Alias("Forget")]
    Task ForgetAsync();
}
