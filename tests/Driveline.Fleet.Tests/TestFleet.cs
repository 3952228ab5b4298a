using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Fleet.Tests;

/// <summary>Telemetry and settings the tests of the fleet share.</summary>
internal static class TestFleet
{
    public static MonitorSettings Settings { get; } = MonitorSettings.Of(Torque.FromNewtonMeters(900), Duration.FromSeconds(0.1));

    public static string CaseJson(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "cases", name + ".case.json"));

    public static DrivelineRegistration Registration() =>
        DrivelineRegistration.Of(CaseJson("dunmarsh-clutch-well-set"), Duration.FromSeconds(0.1))
            .WithOverload(Torque.FromNewtonMeters(900));

    /// <summary>Work at 10 Hz with peaks, overloads, slips, trips and pauses: several alarms in a hundred samples.</summary>
    public static TorqueSample[] Work(int seed, int count)
    {
        var random = new Random(seed);
        var samples = new TorqueSample[count];
        double time = random.Next(100);
        int slipping = 0;
        for (int k = 0; k < count; k++)
        {
            time += random.Next(150) == 0 ? 3 : 0.1;
            slipping = slipping > 0 ? slipping - 1 : random.Next(40) == 0 ? random.Next(1, 5) : 0;
            double nm = random.Next(30) == 0 ? 850 + (300 * random.NextDouble()) : 200 + (400 * random.NextDouble());
            double speed = k < 5 ? 0 : 56;
            samples[k] = new TorqueSample(time, speed, slipping > 0 ? 20 : speed, slipping > 0 && random.Next(3) == 0 ? 20 : nm);
        }

        return samples;
    }

    /// <summary>The work cut into batches, numbered from 1.</summary>
    public static TelemetryBatch[] Batches(int seed, int count, int samplesEach)
    {
        TorqueSample[] work = Work(seed, count * samplesEach);
        var batches = new TelemetryBatch[count];
        for (int k = 0; k < count; k++)
        {
            batches[k] = TelemetryBatch.Of(k + 1, work.AsSpan(k * samplesEach, samplesEach));
        }

        batches[count - 1] = batches[count - 1].WithEnd();
        return batches;
    }
}
