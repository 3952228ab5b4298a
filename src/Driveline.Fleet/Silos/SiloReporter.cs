using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Driveline.Fleet.Silos;

/// <summary>Tells the board each second what this silo does.</summary>
internal sealed partial class SiloReporter(IGrainFactory grains, ILocalSiloDetails silo, SiloDesk desk, ILogger<SiloReporter> log)
    : BackgroundService
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Every);
        while (!stoppingToken.IsCancellationRequested)
        {
            try
            {
                await timer.WaitForNextTickAsync(stoppingToken);
                await grains.GetGrain<IFleetBoardGrain>(0).TellAsync(desk.Figures(silo.Name)).WaitAsync(stoppingToken);
            }
            catch (Exception failed) when (failed is not OutOfMemoryException)
            {
                NotTold(failed);
            }
        }
    }

    [LoggerMessage(Level = LogLevel.Debug, Message = "The board was not told.")]
    private partial void NotTold(Exception failed);
}
