namespace Driveline.Fleet.Studies;

/// <summary>How a shard stands. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.ShardAnswer")]
internal sealed class ShardAnswer
{
    public ShardAnswer(byte[]? bytes, string? failure)
    {
        Bytes = bytes;
        Failure = failure;
    }

    /// <summary>Its file; null while it is computed.</summary>
    [Id(0)]
    public byte[]? Bytes { get; }

    /// <summary>Why it cannot be computed anywhere; null when it can.</summary>
    [Id(1)]
    public string? Failure { get; }
}
