// Docs example: begin
using Driveline.Loads;
using Driveline.Monitoring;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of monitoring.md, compiled; a test keeps both the same.</summary>
internal static class MonitoringExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        var settings = MonitorSettings.Of(overload: Torque.FromNewtonMeters(900), samplePeriod: Duration.FromMilliseconds(100));
        var monitor = new OverloadMonitor(settings);
        var events = new List<MonitorEvent>();
        for (int k = 0; k < 36_000; k++)
        {
            // Invented: an hour of work at 56 rad/s, a peak every 20 s, one slip.
            bool slips = k is > 20_000 and < 20_010;
            double torqueNm = slips ? 620 : k % 200 == 50 ? 560 + (k / 200 * 37 % 180) : 300;
            monitor.Feed([new TorqueSample(timeS: 0.1 * k, speedInRadPerS: 56, speedOutRadPerS: slips ? 20 : 56, torqueNm)], events);
        }

        byte[] saved = monitor.Save();
        OverloadMonitor later = OverloadMonitor.Restore(settings, saved);
        foreach (MonitorEvent seen in events)
        {
            console.WriteLine($"{seen.Kind} at {seen.StartS:F1} s: {seen.SlipAngleRad:F1} rad, {seen.EnergyJ:F0} J");
        }

        WorkPeakEstimate learned = later.LearnWorkPeak(Duration.FromHours(5), ActedInWork.Never);
        WorkPeak peak = WorkPeak.Stated(learned.Torque!);
        console.WriteLine($"{peak.Torque}");

        // Docs example: end
    }
}
