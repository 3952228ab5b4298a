using Driveline.Clutches;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Tests.Monitoring;

/// <summary>Streams and settings the tests of the monitor share.</summary>
internal static class Streams
{
    /// <summary>Overload from 1000 to 900 N·m, peaks from 600 N·m, classes of 1000/64 N·m, a clutch that is cooled.</summary>
    public static MonitorSettings Settings(double periodS = 0.01) =>
        MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(periodS)).WithClutch(Path(),
            Facings.MouldedLining, Temperature.FromDegreesCelsius(30));

    public static HeatPath Path() => HeatPath
        .Of(Area.FromSquareMeters(0.012), 2, ThermalMaterials.HighCarbonCastIron, Length.FromMillimeters(4),
            ThermalMaterials.OrganicLiningWorn)
        .WithCooling(HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(20), Area.FromSquareMeters(0.04));

    /// <summary>A machine at work: engagements, peaks, slips, trips, pauses, and everything that is wrong with telemetry.</summary>
    public static TorqueSample[] Work(int seed, int count)
    {
        var random = new Random(seed);
        var samples = new TorqueSample[count];
        double time = random.NextDouble() * 100;
        double speed = 0, slip = 0, torque = 0;
        for (int k = 0; k < count; k++)
        {
            time += random.Next(60) switch { 0 => 0, 1 => -0.02, 2 => 0.07, 3 => random.NextDouble() * 4, _ => 0.01 };
            speed = random.Next(50) == 0 ? (random.Next(3) == 0 ? 0 : 56) : speed;
            slip = random.Next(15) == 0 ? random.NextDouble() * speed : random.Next(6) == 0 ? 0 : slip;
            torque = random.Next(9) == 0 ? -400 + (random.NextDouble() * 5000) : (0.8 * torque) + (random.NextDouble() * 150);
            samples[k] = random.Next(80) switch
            {
                0 => new TorqueSample(double.NaN, speed, torque),
                1 => new TorqueSample(time, speed, double.PositiveInfinity),
                2 => new TorqueSample(time, 1e9, torque),
                3 => new TorqueSample(time, speed, torque),
                _ => new TorqueSample(time, speed, speed - slip, slip > speed / 2 && random.Next(4) == 0 ? 0 : torque),
            };
        }

        return samples;
    }

    /// <summary>All that a monitor tells, for comparison bit by bit.</summary>
    public static string Told(OverloadMonitor monitor) => Convert.ToBase64String(monitor.Save());

    public static List<MonitorEvent> Feed(OverloadMonitor monitor, ReadOnlySpan<TorqueSample> samples)
    {
        var events = new List<MonitorEvent>();
        monitor.Feed(samples, events);
        return events;
    }
}
