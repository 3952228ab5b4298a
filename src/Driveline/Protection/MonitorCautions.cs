using Driveline.Monitoring;

namespace Driveline.Protection;

/// <summary>The cautions that go with all that monitoring says; no renderer may drop them.</summary>
public static class MonitorCautions
{
    /// <summary>Their codes: first that it is no safety function, then those of every verdict.</summary>
    public static IReadOnlyList<string> Always { get; } = [MonitoringFindings.NotASafetyFunction, .. VerdictCautions.Always];
}
