using Driveline.Provenance;

namespace Driveline.Protection;

/// <summary>The lines of the two comparisons.</summary>
internal static class MarginSteps
{
    public static readonly CalculationStep Part = CalculationStep.Input(
        "partTorque", "T_part", "lowest torque that damages the part", "N·m", "limit of the part");

    public static readonly CalculationStep High = CalculationStep.Input(
        "deviceHigh", "T_high", "highest torque at the part before the device acts", "N·m", "device, referred to the part");

    public static readonly CalculationStep Guard = new(
        "guardMargin", "M_guard", "T_part / T_high", "1", "weakest part over strongest device, at the part");

    public static readonly CalculationStep Low = CalculationStep.Input(
        "deviceLow", "T_low", "lowest torque at which the device acts", "N·m", "device");

    public static readonly CalculationStep Peak = CalculationStep.Input(
        "workPeak", "T_peak", "highest peak of normal work at the device", "N·m", "work");

    public static readonly CalculationStep Work = new(
        "workMargin", "M_work", "T_low / T_peak", "1", "weakest device over highest work peak, at the device");
}
