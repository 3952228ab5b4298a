using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Checks that both design factors share.</summary>
internal static class InterferenceDesign
{
    public static double Z(double loadVariation, double strengthVariation, double probability)
    {
        Guard.NotNegative(loadVariation, "Coefficient of variation of the load", string.Empty, nameof(loadVariation));
        Guard.NotNegative(strengthVariation, "Coefficient of variation of the strength", string.Empty, nameof(strengthVariation));
        return probability > 0 && probability <= 0.5
            ? -NormalDistribution.PhiInverse(probability)
            : throw Guard.OutOfRange("Probability", "above 0 to 0.5", probability, string.Empty, nameof(probability));
    }
}
