// Docs example: begin
using Driveline.Fleet;
using Driveline.Monitoring;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the README of the package Driveline.Fleet, compiled; a test keeps both the same.</summary>
internal static class PackageFleetExample
{
    public static async Task Run(TextWriter console)
    {
        // Docs example: go on
        await using FleetHost fleet = await FleetHost.StartAsync(FleetOptions.Default, sink: null, CancellationToken.None);
        IDrivelineGrain driveline = fleet.Driveline("north-7");
        await driveline.RegisterAsync(DrivelineRegistration.Of("{}", Duration.FromSeconds(0.1)).WithOverload(Torque.FromNewtonMeters(900)));
        var batch = TelemetryBatch.Of(1, [new TorqueSample(timeS: 0.1, speedInRadPerS: 56, torqueNm: 310)]);
        console.WriteLine(await driveline.TakeAsync(batch));
        console.WriteLine(await driveline.TakeAsync(batch));
        console.WriteLine(await driveline.TakeAsync(TelemetryBatch.Of(3, [])));

        // Docs example: end
    }
}
