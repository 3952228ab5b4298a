using UnitsNet;

namespace Driveline.Cli.Fleets;

/// <summary>What the command fleet is asked for.</summary>
internal sealed class FleetRequest
{
    public required string[] Logs { get; init; }

    public string? CasePath { get; init; }

    public Torque? Overload { get; init; }

    public double Ratio { get; init; }

    public int Copies { get; init; }

    public int SamplesEach { get; init; }

    public int Silos { get; init; }

    public string? Config { get; init; }

    public string? Url { get; init; }

    public string? Alarms { get; init; }

    public bool Serves { get; init; }

    public bool IsJson { get; init; }
}
