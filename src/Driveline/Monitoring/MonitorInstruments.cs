#if NET
using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace Driveline.Monitoring;

/// <summary>What monitors tell listeners of this process, if there are any: a meter and a source of activities of one name.</summary>
internal static class MonitorInstruments
{
    public const string Name = "Driveline.Monitoring";

    private static readonly Meter Meter = new(Name);
    private static readonly ActivitySource Source = new(Name);
    private static readonly Counter<long> Samples = Meter.CreateCounter<long>(
        "driveline.monitor.samples", "{sample}", "Samples by what became of them (result).");
    private static readonly Counter<long> Events = Meter.CreateCounter<long>(
        "driveline.monitor.events", "{event}", "Events by their kind (event).");
    private static readonly Histogram<double> OverloadPeaks = Meter.CreateHistogram<double>(
        "driveline.monitor.overload.peak", "N.m", "Highest torque of an overload.");
    private static readonly Histogram<double> SlipEnergies = Meter.CreateHistogram<double>(
        "driveline.monitor.slip.energy", "J", "Heat of a slip or trip.");

    /// <summary>True when anybody listens.</summary>
    public static bool AreHeard =>
        Samples.Enabled || Events.Enabled || OverloadPeaks.Enabled || SlipEnergies.Enabled || Source.HasListeners();

    /// <summary>An activity that lasts as long as samples are taken; null when nobody wants it.</summary>
    public static IDisposable? Begin(int samples) =>
        Source.StartActivity("driveline.monitor.feed")?.SetTag("driveline.monitor.samples", samples);

    /// <summary>Tells what came of samples.</summary>
    public static void Tell(SampleCounts before, SampleCounts after, ReadOnlySpan<MonitorEvent> events)
    {
        Add("taken", after.Taken - before.Taken);
        Add("late", after.Late - before.Late);
        Add("duplicate", after.Duplicate - before.Duplicate);
        Add("nan", after.NotANumber - before.NotANumber);
        Add("outOfRange", after.OutOfRange - before.OutOfRange);
        Add("missing", after.Missing - before.Missing);
        foreach (MonitorEvent seen in events)
        {
            Tell(in seen);
        }
    }

    private static void Add(string result, long count)
    {
        if (count > 0)
        {
            Samples.Add(count, new KeyValuePair<string, object?>("result", result));
        }
    }

    private static void Tell(in MonitorEvent seen)
    {
        Events.Add(1, new KeyValuePair<string, object?>("event", seen.Kind.ToString()));
        if (seen.Kind == MonitorEventKind.Overload)
        {
            OverloadPeaks.Record(seen.PeakNm);
        }
        else if (seen.Kind is MonitorEventKind.Slip or MonitorEventKind.Trip)
        {
            SlipEnergies.Record(seen.EnergyJ);
        }
    }
}
#else
namespace Driveline.Monitoring;

/// <summary>No instruments: they would want a package of the host.</summary>
internal static class MonitorInstruments
{
    public static bool AreHeard => false;

    public static IDisposable? Begin(int samples) => null;

    public static void Tell(SampleCounts before, SampleCounts after, ReadOnlySpan<MonitorEvent> events)
    {
    }
}
#endif
