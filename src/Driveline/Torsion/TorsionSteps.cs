using Driveline.Provenance;

namespace Driveline.Torsion;

/// <summary>Lines of a calculation sheet for torsion.</summary>
internal static class TorsionSteps
{
    public static readonly CalculationStep PolarMoment =
        new("polarMoment", "J_p", "π/32 · (D⁴ − d⁴)", "m⁴", "geometry of a round section");

    public static readonly CalculationStep ShaftStiffness =
        new("shaftStiffness", "k", "G · J_p / L", "N·m/rad", "Saint-Venant torsion of a round shaft, elastic");
}
