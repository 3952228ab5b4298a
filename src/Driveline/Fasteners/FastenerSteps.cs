using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Steps of fastener calculations.</summary>
internal static class FastenerSteps
{
    /// <summary>Strength of the bolt's material.</summary>
    public static readonly CalculationStep TensileStrength = new(
        "boltTensileStrength", "R", "by grade and size", "Pa", "table of the grade's standard");

    /// <summary>Tensile stress area of the thread.</summary>
    public static readonly CalculationStep StressArea = new("threadStressArea", "A_s", "by thread", "m²", "ISO 898-1 and ASME B1.1");

    /// <summary>Load of a bolt in tension.</summary>
    public static readonly CalculationStep TensileLoad =
        new("boltTensileLoad", "F", "R · A_s", "N", "ISO 898-1 and SAE J429: load = stress × stress area");
}
