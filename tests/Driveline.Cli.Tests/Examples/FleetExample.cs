// Docs example: begin
using System.Collections.Concurrent;
using Driveline.Fleet;
using Driveline.Monitoring;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of fleet.md, compiled; a test keeps both the same.</summary>
internal static class FleetExample
{
    public static async Task Run(TextWriter console)
    {
        // Docs example: go on
        var sink = new NewAlarms();
        await using FleetHost fleet = await FleetHost.StartAsync(FleetOptions.Default, sink, CancellationToken.None);
        IDrivelineGrain driveline = fleet.Driveline("north-7");
        string caseJson = "{}";   // or the case of the driveline
        var registration = DrivelineRegistration.Of(caseJson, Duration.FromSeconds(0.1));
        await driveline.RegisterAsync(registration.WithOverload(Torque.FromNewtonMeters(900)));

        double[] torquesNm = [310, 320, 1010, 640, 300];
        TorqueSample[] samples = [.. torquesNm.Select((nm, k) => new TorqueSample(timeS: 0.1 * k, speedInRadPerS: 56, torqueNm: nm))];
        var sender = new BatchSender(driveline, acknowledged: null);
        FleetRefusal? refused = await sender.SendAsync([TelemetryBatch.Of(1, samples)], CancellationToken.None);
        DrivelineStatus? status = await driveline.StatusAsync();
        console.WriteLine(refused?.ToString() ?? $"Stored through {status?.AcknowledgedThrough}, overloads {status?.Overloads}");
        foreach (FleetAlarm alarm in sink.Alarms)
        {
            console.WriteLine(alarm);
        }

        // Docs example: pause
    }

    // Docs example: go on
    // alarms come at least once; their ids tell which of them came before
    internal sealed class NewAlarms : IAlarmSink
    {
        private readonly SeenAlarms seen = new();

        public ConcurrentQueue<FleetAlarm> Alarms { get; } = new();

        public Task DeliverAsync(IReadOnlyList<FleetAlarm> alarms, CancellationToken stopping)
        {
            foreach (FleetAlarm alarm in alarms.Where(a => seen.IsNew(a.Id)))
            {
                Alarms.Enqueue(alarm);
            }

            return Task.CompletedTask;
        }
    }

    // Docs example: end
}
