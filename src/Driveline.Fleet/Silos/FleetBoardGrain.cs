namespace Driveline.Fleet.Silos;

/// <inheritdoc cref="IFleetBoardGrain"/>
internal sealed class FleetBoardGrain : Grain, IFleetBoardGrain
{
    private static readonly TimeSpan Forgotten = TimeSpan.FromMinutes(10);

    private readonly Dictionary<string, SiloFigures> silos = new(StringComparer.Ordinal);

    public Task TellAsync(SiloFigures figures)
    {
        figures.HeardUtc = DateTime.UtcNow;
        silos[figures.Silo] = figures;
        return Task.CompletedTask;
    }

    public Task<SiloFigures[]> ReadAsync()
    {
        foreach (string silo in silos.Values.Where(s => DateTime.UtcNow - s.HeardUtc > Forgotten).Select(s => s.Silo).ToArray())
        {
            silos.Remove(silo);
        }

        return Task.FromResult(silos.Values.OrderBy(s => s.StartedUtc).ToArray());
    }
}
