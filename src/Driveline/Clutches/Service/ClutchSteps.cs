using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>The lines of a clutch's calculation sheet.</summary>
internal static class ClutchSteps
{
    public static readonly CalculationStep CoilRate = new("coilRate", "k", "G · d⁴ / (8 · D³ · Na)", "N/m", "elementary spring theory");
    public static readonly CalculationStep CoilForce = new("coilForce", "F_1", "k · s", "N", "elementary spring theory");
    public static readonly CalculationStep Wahl = new("wahl", "K", "(4·C-1)/(4·C-4) + 0.615/C", "1", "Wahl");
    public static readonly CalculationStep CoilStress = new("coilStress", "τ", "K · 8 · F · D / (π · d³)", "Pa", "Wahl");
    public static readonly CalculationStep DiscDeflection = new("discDeflection", "s_1", "s / i", "m", "sets in series");
    public static readonly CalculationStep DiscForce = new(
        "discForce", "F_1",
        "4·E/(1-ν²) · t⁴/(K_1·D_e²) · K_4² · (s_1/t) · [K_4² · (h_0/t-s_1/t) · (h_0/t-s_1/(2·t)) + 1]", "N", "EN 16984");

    public static readonly CalculationStep Clamp = new(
        "clampForce", "F", "least or most of the springs over their deflections", "N", "equilibrium");

    public static readonly CalculationStep ClampOfCoils = new("clampForce", "F", "n · F_1 · f", "N", "equilibrium");
    public static readonly CalculationStep ClampOfDiscs = new("clampForce", "F", "n · p · F_1 · f", "N", "equilibrium");
    public static readonly CalculationStep Friction = CalculationStep.Input(
        "friction", "μ", "friction coefficient of the faces", "1", "facing data");
    public static readonly CalculationStep UniformWearRadius = new("uniformWearRadius", "r", "(Ro + Ri) / 2", "m", "uniform wear");
    public static readonly CalculationStep UniformPressureRadius = new(
        "uniformPressureRadius", "r", "2 · (Ro³ - Ri³) / (3 · (Ro² - Ri²))", "m", "uniform pressure");

    public static readonly CalculationStep Torque = new("slipTorque", "T", "N · μ · F · r", "N·m", "equilibrium");
    public static readonly CalculationStep LeverTorque = new(
        "leverTorque", "T", "F_L · a", "N·m", "lever measurement, which comes before any calculation");
    public static readonly CalculationStep PeakPressure = new("peakPressure", "p", "F / (2 · π · Ri · (Ro - Ri))", "Pa", "uniform wear");
    public static readonly CalculationStep MeanPressure = new("meanPressure", "p", "F / (π · (Ro² - Ri²))", "Pa", "uniform pressure");

    public static readonly CalculationStep SlipTime = new("slipTime", "t", "Δω / ((T - Td)/J1 + (T - Tl)/J2)", "s", "momentum");
    public static readonly CalculationStep EngagementHeat = new(
        "engagementHeat", "E", "J_e · J · Δω² / (2 · (J_e + J)) + T_l · φ", "J", "energy balance");
    public static readonly CalculationStep SlipAngleFalling = new("slipAngle", "φ", "Δω · t / 2", "rad", "slip falling in a straight line");
    public static readonly CalculationStep SlipAngleBlocked = new("slipAngle", "φ", "Δω · t", "rad", "blocked: the slip stays");
    public static readonly CalculationStep SlipEnergy = new("slipEnergy", "E", "T · φ", "J", "work");
    public static readonly CalculationStep SlipPower = new("slipPower", "P", "T · Δω", "W", "work");
    public static readonly CalculationStep HeatShare = CalculationStep.Input(
        "heatShare", "σ", "share of the heat that goes into the plates, by √(k·ρ·c) of plate and lining", "1", "equal face temperatures");
    public static readonly CalculationStep Flux = new("heatFlux", "q", "σ · P / (N · A)", "W/m²", "heat balance");
    public static readonly CalculationStep FaceRise = new(
        "faceRise", "ΔT", "q · response of a plate heated on one face", "K", "Carslaw and Jaeger, conduction in a slab");

    public static readonly CalculationStep TimeToContinuous = new(
        "timeToContinuous", "t_c", "when the face reaches what the lining takes for long", "s",
        "the rise of the face, solved for the time");

    public static readonly CalculationStep TimeToMaximum = new(
        "timeToMaximum", "t_m", "when the face reaches the most the lining takes", "s", "the rise of the face, solved for the time");

    public static readonly CalculationStep LumpedRise = new("lumpedRise", "ΔT_m", "σ · E / C", "K", "heat balance");
}
