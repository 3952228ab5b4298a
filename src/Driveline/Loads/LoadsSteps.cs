using Driveline.Provenance;

namespace Driveline.Loads;

/// <summary>The lines a calculation sheet of loads is made of.</summary>
internal static class LoadsSteps
{
    private const string Stated = "as stated";

    public static readonly CalculationStep PowerNeed = new("powerNeed", "P", "a + b · w + c · F", "W", "ASABE D497, remembered");

    public static readonly CalculationStep PowerNeedLow = new("powerNeedLow", "P_low", "P · (1 − r)", "W", "ASABE D497, remembered");

    public static readonly CalculationStep PowerNeedHigh = new("powerNeedHigh", "P_high", "P · (1 + r)", "W", "ASABE D497, remembered");

    public static readonly CalculationStep PeakFactor = new(
        "peakFactor", "f", "1 + z · s / T_mean", "1", "mean and deviation of a spectrum");

    public static readonly CalculationStep MeanPower = CalculationStep.Input(
        "meanPower", "P", "mean power of the work at the PTO", "W", Stated);

    public static readonly CalculationStep MeanTorque = new("meanTorque", "T_mean", "P / ω", "N·m", "power balance");

    public static readonly CalculationStep StatedMean = CalculationStep.Input(
        "statedMean", "T_mean", "mean torque of the work at the PTO", "N·m", Stated);

    public static readonly CalculationStep StallTorque = CalculationStep.Input(
        "stallTorque", "T_stall", "torque that stalls the engine", "N·m", "power and torque reserve of the tractor");

    public static readonly CalculationStep CappedMean = new(
        "cappedMean", "T_mean", "the lower of T_mean and T_stall", "N·m", "no mean torque above what stalls the engine");

    public static readonly CalculationStep WorkFactor = CalculationStep.Input(
        "workFactor", "f", "peaks of the work over its mean torque", "1", Stated);

    public static readonly CalculationStep WorkPeak = new("workPeak", "T_peak", "T_mean · f", "N·m", "definition of the factor");

    public static readonly CalculationStep BladeInertia = new(
        "bladeInertia", "J", "m · (l² / 12 + (r_p + l / 2)²)", "kg·m²", "mechanics, ∫ r² dm");

    public static readonly CalculationStep ShockInertia = new(
        "shockInertia", "J_s", "m / 4 · r_p²", "kg·m²", "mechanics, a bar pushed at its pin");

    public static readonly CalculationStep BarInertia = new("barInertia", "J", "m · (L² + B²) / 12", "kg·m²", "mechanics, ∫ r² dm");

    public static readonly CalculationStep RingInertia = new("ringInertia", "J", "m · (R² + r²) / 2", "kg·m²", "mechanics, ∫ r² dm");

    public static readonly CalculationStep GyrationInertia = new("gyrationInertia", "J", "m · k²", "kg·m²", "mechanics, ∫ r² dm");

    public static readonly CalculationStep ReferredInertia = new(
        "referredInertia", "J_pto", "J · i²", "kg·m²", "equal energy at both speeds");

    public static readonly CalculationStep StoredEnergy = new("storedEnergy", "E", "J · ω² / 2", "J", "mechanics");

    public static readonly CalculationStep DipEnergy = new("dipEnergy", "E", "J · (ω₀² − ω₁²) / 2", "J", "Banno and Ogawa 1979");

    public static readonly CalculationStep TipSpeed = new("tipSpeed", "v", "r · ω · i", "m/s", "kinematics");

    public static readonly CalculationStep SeriesStiffness = new(
        "seriesStiffness", "k", "1 / (1/k₁ + 1/k₂)", "N·m/rad", "springs in series");

    public static readonly CalculationStep ReferredStiffness = new(
        "referredStiffness", "k_pto", "k · i²", "N·m/rad", "equal energy at both speeds");

    public static readonly CalculationStep RampTorque = new(
        "rampTorque", "T_r", "T_l + √(2 · J · ω · T_c / t_r)", "N·m", "clutch torque rising evenly");

    public static readonly CalculationStep FullTorque = new(
        "rampTorque", "T_r", "the clutch passes no more than it can", "N·m", "capacity of the PTO clutch");

    public static readonly CalculationStep RampFactor = new(
        "rampFactor", "f", "1 + |sin(ω_n t_r / 2)| / (ω_n t_r / 2)", "1", "ramp on a spring and inertia");

    public static readonly CalculationStep SwingFactor = new(
        "rampFactor", "f", "largest swing: 2 of a sudden bite, 1 + 1/x of a ramp", "1", "ramp on a spring and inertia");

    public static readonly CalculationStep EngagementPeak = new(
        "engagementPeak", "T", "T_l + f · (T_r − T_l)", "N·m", "clutch torque with swing");

    public static readonly CalculationStep ImpactTorque = new(
        "impactTorque", "T_1", "T_s + ω · √(J · k)", "N·m", "energy balance of a stopped inertia on a spring, PTO clutch without slip");

    public static readonly CalculationStep SlippingImpact = new(
        "slippingImpact", "T_2", "T_c + ω · √(J_l · k)", "N·m", "the same behind a PTO clutch that slips");

    public static readonly CalculationStep StrikePeak = new(
        "strikePeak", "T", "the lower of T_1 and T_2, at least T_s", "N·m", "both bound it");

    public static readonly CalculationStep Steady = CalculationStep.Input(
        "steadyTorque", "T_s", "torque of the work before the blow", "N·m", Stated);

    public static readonly CalculationStep Load = CalculationStep.Input(
        "loadTorque", "T_l", "torque of the machine while it is run up", "N·m", Stated);

    public static readonly CalculationStep Capacity = CalculationStep.Input(
        "clutchCapacity", "T_c", "most that the PTO clutch passes", "N·m", Stated);

    public static readonly CalculationStep Inertia = CalculationStep.Input(
        "inertia", "J", "inertia that is stopped, or run up", "kg·m²", Stated);

    public static readonly CalculationStep LineInertia = CalculationStep.Input(
        "lineInertia", "J_l", "inertia behind the PTO clutch", "kg·m²", Stated);

    public static readonly CalculationStep Stiffness = CalculationStep.Input(
        "stiffness", "k", "stiffness up to the stopped point", "N·m/rad", Stated);

    public static readonly CalculationStep Speed = CalculationStep.Input("speed", "ω", "speed of the PTO", "rad/s", Stated);

    public static readonly CalculationStep Rise = CalculationStep.Input("rise", "t_r", "time in which the clutch is engaged", "s", Stated);

    public static readonly CalculationStep PtoTorque = new("engineToPto", "T_pto", "T_engine · i · η", "N·m", "power balance");

    public static readonly CalculationStep CoastTime = new("coastTime", "t", "J · ω / T", "s", "constant drag");
}
