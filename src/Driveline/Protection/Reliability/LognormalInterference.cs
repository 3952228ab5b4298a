using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Interference of a lognormal load with a lognormal strength, in closed form.</summary>
/// <remarks>
/// z = ln[(m_S/m_L) √((1 + C_L²)/(1 + C_S²))] / √ln[(1 + C_S²)(1 + C_L²)]; P(L &gt; S) = Φ(−z).
/// m means in one unit, C coefficients of variation.
/// </remarks>
/// <example>Strength 100 with C = 0.10, load 70 with C = 0.15: z = 2.022, P = 0.0216.</example>
internal static class LognormalInterference
{
    /// <summary>Probability that the load exceeds the strength.</summary>
    /// <param name="loadMean">Mean load; above 0.</param>
    /// <param name="loadVariation">Its coefficient of variation; above 0.</param>
    /// <param name="strengthMean">Mean strength, in the unit of the load; above 0.</param>
    /// <param name="strengthVariation">Its coefficient of variation; above 0.</param>
    /// <param name="basis">Where the four come from.</param>
    public static Probability Of(double loadMean, double loadVariation, double strengthMean, double strengthVariation, Basis basis)
    {
        var steps = default(NoSteps);
        return new Probability(
            Exceeds(
                Guard.Positive(loadMean, "Mean load", string.Empty, nameof(loadMean)),
                Guard.Positive(loadVariation, "Coefficient of variation of the load", string.Empty, nameof(loadVariation)),
                Guard.Positive(strengthMean, "Mean strength", string.Empty, nameof(strengthMean)),
                Guard.Positive(strengthVariation, "Coefficient of variation of the strength", string.Empty, nameof(strengthVariation)),
                ref steps),
            Guard.NotNull(basis, nameof(basis)));
    }

    /// <summary>Ratio of mean strength to mean load at which the load exceeds the strength with a stated probability.</summary>
    /// <remarks>n = exp(z √ln(1 + C²) + ½ ln(1 + C²)), C² = (C_S² + C_L²)/(1 + C_L²), z = Φ⁻¹(1 − P).</remarks>
    /// <param name="loadVariation">C_L; 0 or more.</param>
    /// <param name="strengthVariation">C_S; 0 or more.</param>
    /// <param name="probability">P; above 0, at most 0.5.</param>
    public static double DesignFactor(double loadVariation, double strengthVariation, double probability)
    {
        double z = InterferenceDesign.Z(loadVariation, strengthVariation, probability);
        double load2 = loadVariation * loadVariation;
        double log = Math.Log(1 + (((strengthVariation * strengthVariation) + load2) / (1 + load2)));
        return Math.Exp((z * Math.Sqrt(log)) + (log / 2));
    }

    internal static double Exceeds<S>(double loadMean, double loadVariation, double strengthMean, double strengthVariation, ref S log)
        where S : struct, ISteps
    {
        double load = 1 + (loadVariation * loadVariation);
        double strength = 1 + (strengthVariation * strengthVariation);
        double z = Math.Log(strengthMean / loadMean * Math.Sqrt(load / strength)) / Math.Sqrt(Math.Log(strength * load));
        log.Add(InterferenceSteps.LognormalZ, z);
        double p = NormalDistribution.Phi(-z);
        log.Add(InterferenceSteps.Exceeds, p);
        return p;
    }
}
