using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Steps of fastener calculations.</summary>
public static class FastenerSteps
{
    /// <summary>Load of a bolt in tension.</summary>
    public static readonly CalculationStep TensileLoad =
        new("boltTensileLoad", "F", "R · A_s", "N", "ISO 898-1 and SAE J429: load = stress × stress area");
}
