using Driveline.Findings;
using Driveline.Provenance;

namespace Driveline.Protection;

/// <summary>The cautions that go with all that monitoring says; no renderer may drop them.</summary>
public static class MonitorCautions
{
    /// <summary>Watching a log stops nothing.</summary>
    public static readonly Caution NotASafetyFunction = new("caution.notASafetyFunction",
        Basis.CommonPractice("a record of samples is no protective device"));

    /// <summary>First that it is no safety function, then those of every verdict.</summary>
    public static IReadOnlyList<Caution> Always { get; } = [NotASafetyFunction, .. VerdictCautions.Always];
}
