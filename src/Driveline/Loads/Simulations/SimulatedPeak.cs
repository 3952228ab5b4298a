using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>The highest torque of a simulated engagement, and what it took to find it. Immutable.</summary>
internal sealed class SimulatedPeak
{
    internal SimulatedPeak(TorqueBand? atPto, WorkMeter meter)
    {
        AtPto = atPto;
        Work = meter.Done;
        Findings = [.. meter.Findings];
    }

    /// <summary>The torque at the PTO; null when it is not known.</summary>
    public TorqueBand? AtPto { get; }

    /// <summary>Work of all its runs.</summary>
    public long Work { get; }

    /// <summary>That the limits did not suffice; else empty.</summary>
    public IReadOnlyList<Finding> Findings { get; }
}
