using Driveline.Provenance;

namespace Driveline.ShearBolts;

/// <summary>The lines a calculation sheet of a shear-bolt joint is made of.</summary>
internal static class ShearBoltSteps
{
    public static readonly CalculationStep Ratio =
        CalculationStep.Input("shearRatio", "κ", "shear strength / tensile strength", "1", "table of ratios by class and plane");

    public static readonly CalculationStep Tensile = CalculationStep.Input(
        "tensileStrength", "R_m", "tensile strength of the bolt", "Pa", "material of the bolt");

    public static readonly CalculationStep Shear = new("shearStrength", "τ", "κ · R_m", "Pa", "definition of the ratio");

    public static readonly CalculationStep Area = CalculationStep.Input(
        "shearArea", "A", "area of one shear plane", "m²", "bolt and plane");

    public static readonly CalculationStep StandOff = new(
        "standOffFactor", "k_c", "1 / √(1 + (c · F_v / M_R)²)", "1", "EN 1993-1-8:2005, 3.13, shear and bending of a pin, gap term");

    public static readonly CalculationStep Planes = CalculationStep.Input(
        "planesThatCarry", "m", "planes that carry together", "1", "layout and fit of the holes");

    public static readonly CalculationStep Radius = CalculationStep.Input("radius", "r", "radius of the shear planes", "m", "layout");

    public static readonly CalculationStep Torque = new("breakTorque", "T", "m · A · τ · r", "N·m", "equilibrium");

    public static readonly CalculationStep Bent = new("breakTorqueBent", "T_c", "k_c · T", "N·m", "bolt bent by the gap");

    public static readonly CalculationStep Dragging = new("breakTorqueWithFriction", "T_max", "T + T_f", "N·m", "drag beside the bolts");

    public static readonly CalculationStep Friction = CalculationStep.Input(
        "frictionTorque", "T_f", "hub and flange drag, high end only", "N·m", "as stated");

    public static readonly CalculationStep Diameter = new(
        "pinDiameter", "d", "√(4 · T / (π · m · τ · r))", "m", "equilibrium, solved for d");

    public static readonly CalculationStep HoleYield = new(
        "holeYieldTorque", "T_h", "m · 1.5 · d · t · f_y · r", "N·m", "EN 1993-1-8:2005, Table 3.10, bearing of plate and pin");

    public static readonly CalculationStep StressRange = new(
        "shearStressRange", "Δτ", "T / (m · A · r)", "Pa", "equilibrium, from 0 to the peak");
}
