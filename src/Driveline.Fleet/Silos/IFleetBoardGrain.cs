namespace Driveline.Fleet.Silos;

/// <summary>Where the silos of a cluster tell what they do; one, with key 0, in memory.</summary>
[Alias("Driveline.Fleet.IFleetBoardGrain")]
internal interface IFleetBoardGrain : IGrainWithIntegerKey
{
    [Alias("Tell")]
    Task TellAsync(SiloFigures figures);

    [Alias("Read")]
    Task<SiloFigures[]> ReadAsync();
}
