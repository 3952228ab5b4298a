using System.Collections.Concurrent;
using Driveline.Loads;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Tests.Cases;

/// <summary>Runs of torsional models that were run before, by all that the model and its start hold. Safe to share.</summary>
internal sealed class RememberedRuns
{
    private readonly ConcurrentDictionary<string, TransientResult> runs = new(StringComparer.Ordinal);

    /// <summary>A meter with the usual limits that counts each run as if it were run anew.</summary>
    public WorkMeter Meter() => new RememberingMeter(this);

    private TransientResult Run(TorsionStart start, Duration duration, TransientLimits limits)
    {
        string key = StateKey.Of(start, duration.Seconds);
        if (runs.TryGetValue(key, out TransientResult? known) && known.Work <= limits.Work)
        {
            return known;
        }

        TransientResult result = Transient.Run(start, duration, limits, new TransientWorkspace());
        return result.IsComplete ? runs.GetOrAdd(key, result) : result;
    }

    private sealed class RememberingMeter(RememberedRuns memory) : WorkMeter(SimulationLimits.Usual)
    {
        private protected override TransientResult RunWithin(TorsionStart start, Duration duration, TransientLimits limits) =>
            memory.Run(start, duration, limits);
    }
}
