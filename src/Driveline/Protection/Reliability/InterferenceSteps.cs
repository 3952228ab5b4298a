using Driveline.Provenance;

namespace Driveline.Protection;

/// <summary>The steps of the closed-form interference kernels.</summary>
internal static class InterferenceSteps
{
    private const string Source = "load-strength interference, closed form";

    public static readonly CalculationStep NormalZ = new(
        "interferenceNormalZ", "z", "(m_S − m_L) / √(s_S² + s_L²)", "1", Source);

    public static readonly CalculationStep LognormalZ = new(
        "interferenceLognormalZ", "z", "ln[(m_S/m_L) √((1+C_L²)/(1+C_S²))] / √ln[(1+C_S²)(1+C_L²)]", "1", Source);

    public static readonly CalculationStep Exceeds = new("interferenceProbability", "P", "Φ(−z)", "1", Source);
}
