using System.Runtime.InteropServices;
using Driveline.Fleet;

namespace Driveline.Cli.Fleets;

/// <summary>Starts the silos, replays the logs into them, and serves until stopped.</summary>
/// <remarks>The rest of the tool loads nothing of a fleet: only here and below are its types touched.</remarks>
internal static class FleetRun
{
    public static int Run(Terminal terminal, FleetRequest request)
    {
        if (request.Logs.Length == 0 && !request.Serves)
        {
            throw new BadInputException("fleet needs logs to replay, or --serve.");
        }

        using var stop = new CancellationTokenSource();
        void Stop(PosixSignalContext signal)
        {
            signal.Cancel = true;
            stop.Cancel();
        }

        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        try
        {
            return RunAsync(terminal, request, stop.Token).GetAwaiter().GetResult();
        }
        catch (OperationCanceledException)
        {
            throw new BadInputException("Stopped before all logs were replayed.");
        }
        catch (Exception failed) when (failed is ArgumentException or IOException or UnauthorizedAccessException)
        {
            throw new BadInputException(failed.Message);
        }
    }

    private static async Task<int> RunAsync(Terminal terminal, FleetRequest request, CancellationToken stop)
    {
        FleetOptions options = FleetOptions.OfFile(request.Config).WithWarnings(request.Serves);
        options = request.Url is { } url ? options.WithHttp(url, options.ApiKey) : options;
        if (options.Redis is not null && request.Silos > 1)
        {
            throw new BadInputException("--silos is for a fleet in memory; with Redis start one process for each silo.");
        }

        using AlarmFile? file = request.Alarms is { } path ? new AlarmFile(path) : null;
        var alarms = new CountedAlarms(file);
        await using var hosts = new FleetHosts();
        FleetHost first = await hosts.StartAsync(options, request.Silos, alarms, stop);
        if (first.Url is { } place)
        {
            terminal.Error("page and endpoint on " + place);
        }

        if (request.Logs.Length > 0)
        {
            var replay = new FleetReplay(first, request, terminal);
            FleetSummary summary = await replay.RunAsync(alarms, stop);
            summary.Print(terminal, request.IsJson);
        }

        if (request.Serves)
        {
            terminal.Error("silo " + first.Name + " serves until it is stopped");
            await Task.Delay(Timeout.Infinite, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }

        return ExitCode.Answered;
    }
}
