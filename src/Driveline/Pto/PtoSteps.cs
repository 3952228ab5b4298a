using Driveline.Provenance;

namespace Driveline.Pto;

/// <summary>The lines a calculation sheet of the PTO side is made of.</summary>
internal static class PtoSteps
{
    public static readonly CalculationStep Torque = new("ptoTorque", "T", "P / ω", "N·m", "power balance");

    public static readonly CalculationStep Power = new("ptoPower", "P", "T · ω", "W", "power balance");

    public static readonly CalculationStep SectionModulus =
        new("polarSectionModulus", "W_p", "π · (D⁴ − d⁴) / (16 · D)", "m³", "torsion of a round section");

    public static readonly CalculationStep PlasticModulus =
        new("plasticTorsionModulus", "W_pl", "π · (D³ − d³) / 12", "m³", "full shear yield of a round section, no hardening");

    public static readonly CalculationStep ShearYield =
        new("shearYield", "τ_y", "σ_y / √3", "Pa", "distortion energy");

    public static readonly CalculationStep FirstYield = new("firstYieldTorque", "T_y", "W_p · τ_y", "N·m", "torsion of a round section");

    public static readonly CalculationStep FullPlastic = new(
        "fullPlasticTorque", "T_pl", "W_pl · τ_y", "N·m", "torsion of a round section");
}
