using Driveline.Provenance;

namespace Driveline.Fatigue;

/// <summary>The lines a calculation sheet of fatigue is made of.</summary>
internal static class FatigueSteps
{
    public static readonly CalculationStep Cycles =
        new("cyclesToFailure", "N", "2·10⁶ · (Δτ_C / Δτ)^m", "1", "EN 1993-1-9:2005, 7.1");

}
