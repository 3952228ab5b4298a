using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>The lines of a clutch's calculation sheet.</summary>
internal static class ClutchSteps
{
    public static readonly CalculationStep CoilRate = new("coilRate", "k", "G · d⁴ / (8 · D³ · Na)", "N/m", "elementary spring theory");
    public static readonly CalculationStep CoilForce = new(
        "coilForce", "F1", "k · (free length - length)", "N", "elementary spring theory");
    public static readonly CalculationStep Wahl = new("wahl", "K", "(4C-1)/(4C-4) + 0.615/C", "1", "Wahl");
    public static readonly CalculationStep CoilStress = new("coilStress", "τ", "K · 8 · F · D / (π · d³)", "Pa", "Wahl");
    public static readonly CalculationStep DiscDeflection = new("discDeflection", "s", "deflection of one disc", "m", "geometry");
    public static readonly CalculationStep DiscForce = new(
        "discForce", "F1", "4E/(1-ν²) · t⁴/(K1·De²) · K4² · (s/t) · [K4² · (h0/t-s/t) · (h0/t-s/2t) + 1]", "N", "EN 16984");

    public static readonly CalculationStep Clamp = new("clampForce", "F", "sum of the spring forces", "N", "equilibrium");
    public static readonly CalculationStep Friction = new("friction", "μ", "friction coefficient of the faces", "1", "facing data");
    public static readonly CalculationStep UniformWearRadius = new("uniformWearRadius", "r", "(Ro + Ri) / 2", "m", "uniform wear");
    public static readonly CalculationStep UniformPressureRadius = new(
        "uniformPressureRadius", "r", "2/3 · (Ro³ - Ri³) / (Ro² - Ri²)", "m", "uniform pressure");

    public static readonly CalculationStep Torque = new("slipTorque", "T", "N · μ · F · r", "N·m", "equilibrium");
    public static readonly CalculationStep LeverTorque = new("leverTorque", "T", "force · arm", "N·m", "lever measurement");
    public static readonly CalculationStep PeakPressure = new("peakPressure", "p", "F / (2π · Ri · (Ro - Ri))", "Pa", "uniform wear");
    public static readonly CalculationStep MeanPressure = new("meanPressure", "p", "F / (π · (Ro² - Ri²))", "Pa", "uniform pressure");

    public static readonly CalculationStep SlipTime = new("slipTime", "t", "Δω / ((T - Td)/J1 + (T - Tl)/J2)", "s", "momentum");
    public static readonly CalculationStep EngagementHeat = new(
        "engagementHeat", "E", "J_e · J · Δω² / (2 · (J_e + J)) + T_l · φ", "J", "energy balance");
    public static readonly CalculationStep SlipAngle = new("slipAngle", "φ", "∫ Δω dt", "rad", "kinematics");
    public static readonly CalculationStep SlipEnergy = new("slipEnergy", "E", "T · φ", "J", "work");
    public static readonly CalculationStep SlipPower = new("slipPower", "P", "T · Δω", "W", "work");
    public static readonly CalculationStep HeatShare = new(
        "heatShare", "σ", "e1 / (e1 + e2), e = √(k·ρ·c)", "1", "equal face temperatures");
    public static readonly CalculationStep Flux = new("heatFlux", "q", "σ · P / (N · A)", "W/m²", "heat balance");
    public static readonly CalculationStep FaceRise = new(
        "faceRise", "ΔT", "q · response of a plate heated on one face", "K", "Carslaw and Jaeger, conduction in a slab");

    public static readonly CalculationStep LumpedRise = new("lumpedRise", "ΔTm", "E / (m · c)", "K", "heat balance");
}
