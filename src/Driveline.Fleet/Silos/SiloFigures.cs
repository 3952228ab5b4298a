namespace Driveline.Fleet.Silos;

/// <summary>What a silo does, for the page.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.SiloFigures")]
internal sealed class SiloFigures
{
    [Id(0)]
    public required string Silo { get; init; }

    [Id(1)]
    public DateTime StartedUtc { get; init; }

    [Id(2)]
    public int Drivelines { get; init; }

    /// <summary>By <see cref="BatchOutcome"/>.</summary>
    [Id(3)]
    public required long[] Batches { get; init; }

    [Id(4)]
    public double BatchesPerSecond { get; init; }

    [Id(5)]
    public double MiddleMs { get; init; }

    [Id(6)]
    public double SlowestMs { get; init; }

    [Id(7)]
    public long Alarms { get; init; }

    [Id(8)]
    public long MemoryBytes { get; init; }

    [Id(9)]
    public int StateFormat { get; init; }

    [Id(10)]
    public required DrivelineStatus[] Worst { get; init; }

    [Id(11)]
    public required ToldAlarm[] Latest { get; init; }

    [Id(12)]
    public DateTime HeardUtc { get; set; }
}
