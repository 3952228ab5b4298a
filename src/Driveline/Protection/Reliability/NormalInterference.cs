using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Interference of a normal load with a normal strength, in closed form.</summary>
/// <remarks>z = (m_S − m_L) / √(s_S² + s_L²); P(L &gt; S) = Φ(−z). m means, s standard deviations, in one unit.</remarks>
/// <example>Strength 1000 ± 80, load 700 ± 90: z = 2.491, P = 0.00636.</example>
internal static class NormalInterference
{
    /// <summary>Probability that the load exceeds the strength.</summary>
    public static Probability Of(NormalDistribution load, NormalDistribution strength)
    {
        Guard.NotNull(load, nameof(load));
        Guard.NotNull(strength, nameof(strength));
        var steps = default(NoSteps);
        return new Probability(
            Exceeds(load.Mean!.Value, load.StandardDeviation, strength.Mean!.Value, strength.StandardDeviation, ref steps),
            Basis.Weakest(load.Basis, strength.Basis));
    }

    /// <summary>Ratio of mean strength to mean load at which the load exceeds the strength with a stated probability.</summary>
    /// <remarks>
    /// n = [1 + √(1 − (1 − z²C_S²)(1 − z²C_L²))] / (1 − z²C_S²), with C the coefficients of variation and z = Φ⁻¹(1 − P).
    /// </remarks>
    /// <param name="loadVariation">C_L; 0 or more.</param>
    /// <param name="strengthVariation">C_S; 0 or more, and z C_S below 1.</param>
    /// <param name="probability">P; above 0, at most 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is out of its range: no ratio gives so small a probability at that scatter.
    /// </exception>
    public static double DesignFactor(double loadVariation, double strengthVariation, double probability)
    {
        double z = InterferenceDesign.Z(loadVariation, strengthVariation, probability);
        double s = 1 - (z * z * strengthVariation * strengthVariation);
        double l = 1 - (z * z * loadVariation * loadVariation);
        return s > 0
            ? (1 + Math.Sqrt(1 - (s * l))) / s
            : throw Guard.OutOfRange(
                "Coefficient of variation of the strength", FormattableString.Invariant($"below {1 / z:G4} at this probability"),
                strengthVariation, string.Empty, nameof(strengthVariation));
    }

    internal static double Exceeds<S>(double loadMean, double loadSd, double strengthMean, double strengthSd, ref S log)
        where S : struct, ISteps
    {
        double z = (strengthMean - loadMean) / Math.Sqrt((strengthSd * strengthSd) + (loadSd * loadSd));
        log.Add(InterferenceSteps.NormalZ, z);
        double p = NormalDistribution.Phi(-z);
        log.Add(InterferenceSteps.Exceeds, p);
        return p;
    }
}
