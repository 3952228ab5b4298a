using System.Diagnostics;
using System.Diagnostics.Metrics;
using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Cli.Tests;

/// <summary>What a host hears of a monitor by the names of monitoring.md.</summary>
public class MonitorInstrumentsTests
{
    private const string Name = "Driveline.Monitoring";

    private readonly Dictionary<string, double> sums = new(StringComparer.Ordinal);
    private readonly int thread = Environment.CurrentManagedThreadId;

    [Fact]
    public void Feed_WithListeners_IsHeardByItsDocumentedNames()
    {
        var activities = new List<string>();
        using var listener = new MeterListener
        {
            InstrumentPublished = (instrument, heard) =>
            {
                if (instrument.Meter.Name == Name)
                {
                    heard.EnableMeasurementEvents(instrument);
                }
            },
        };
        listener.SetMeasurementEventCallback<long>((instrument, value, tags, _) => Add(instrument, value, tags));
        listener.SetMeasurementEventCallback<double>((instrument, value, tags, _) => Add(instrument, value, tags));
        listener.Start();
        using var tracer = new ActivityListener
        {
            ShouldListenTo = source => source.Name == Name,
            Sample = (ref ActivityCreationOptions<ActivityContext> _) => ActivitySamplingResult.AllData,
            ActivityStopped = activity =>
            {
                lock (activities)
                {
                    activities.Add(activity.OperationName);
                }
            },
        };
        ActivitySource.AddActivityListener(tracer);

        var monitor = new OverloadMonitor(MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(1)));
        var events = new List<MonitorEvent>();
        monitor.Feed(
            [
                new TorqueSample(0, 50, 50, 0), new TorqueSample(1, 50, 50, 1100), new TorqueSample(1, 50, 50, 0),
                new TorqueSample(0.5, 50, 50, 0), new TorqueSample(2, 50, 50, double.NaN), new TorqueSample(2, 50, 50, 0),
                new TorqueSample(3, 50, 40, 1200), new TorqueSample(5, 50, 40, 600),
            ],
            events);
        monitor.Finish(events);

        Assert.Contains("driveline.monitor.feed", activities);
        Assert.Equal(5, sums["driveline.monitor.samples taken"]);
        Assert.Equal(1, sums["driveline.monitor.samples late"]);
        Assert.Equal(1, sums["driveline.monitor.samples duplicate"]);
        Assert.Equal(1, sums["driveline.monitor.samples nan"]);
        Assert.Equal(1, sums["driveline.monitor.samples missing"]);
        Assert.Equal(2, sums["driveline.monitor.events Overload"]);
        Assert.Equal(1, sums["driveline.monitor.events Slip"]);
        Assert.Equal(1100 + 1200, sums["driveline.monitor.overload.peak"]);

        // Slip speeds 0, 10, 10 rad/s: 600 N·m · 5 rad and 900 N·m · 20 rad.
        Assert.Equal(21_000, sums["driveline.monitor.slip.energy"], 1e-9);
    }

    // Other tests feed monitors on other threads meanwhile.
    private void Add(Instrument instrument, double value, ReadOnlySpan<KeyValuePair<string, object?>> tags)
    {
        if (Environment.CurrentManagedThreadId == thread)
        {
            string key = tags.Length == 0 ? instrument.Name : instrument.Name + " " + tags[0].Value;
            sums[key] = sums.GetValueOrDefault(key) + value;
        }
    }
}
