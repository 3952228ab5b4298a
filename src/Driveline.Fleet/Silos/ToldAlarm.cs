namespace Driveline.Fleet.Silos;

/// <summary>An alarm that was told, for the page.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.ToldAlarm")]
internal sealed class ToldAlarm
{
    [Id(0)]
    public required string Driveline { get; init; }

    [Id(1)]
    public required string Id { get; init; }

    [Id(2)]
    public required string Kind { get; init; }

    [Id(3)]
    public double StartS { get; init; }

    [Id(4)]
    public double DurationS { get; init; }

    [Id(5)]
    public double PeakNm { get; init; }

    [Id(6)]
    public DateTime ToldUtc { get; init; }
}
