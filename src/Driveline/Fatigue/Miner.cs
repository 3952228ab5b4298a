using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fatigue;

/// <summary>Linear damage sum of Palmgren and Miner: D = Σ nᵢ / Nᵢ, failure at D = 1.</summary>
/// <remarks>The order of the loads is ignored; measured sums at failure scatter widely around 1.</remarks>
internal static class Miner
{
    /// <summary>Damage of counted ranges on a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="rangesPa">Stress ranges in Pa; each 0 or more.</param>
    /// <param name="cycles">Cycles at each range; each 0 or more; half cycles allowed.</param>
    /// <returns>D; 0 when every range lies below the cut-off.</returns>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative or not finite.</exception>
    /// <example>Category 100: 1000 cycles of 200 MPa and 1000 of 300 MPa: 0.016 + 0.1215 = 0.1375.</example>
    public static double Damage(SNCurve curve, ReadOnlySpan<double> rangesPa, ReadOnlySpan<double> cycles)
    {
        Guard.NotNull(curve, nameof(curve));
        if (rangesPa.Length != cycles.Length)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"Ranges and cycles must be equally many; got {rangesPa.Length} and {cycles.Length}."),
                    nameof(cycles));
        }

        NoSteps none = default;
        double damage = 0;
        for (int i = 0; i < rangesPa.Length; i++)
        {
            double range = Guard.NotNegative(rangesPa[i], "Stress range", "Pa", nameof(rangesPa));
            double count = Guard.NotNegative(cycles[i], "Number of cycles", string.Empty, nameof(cycles));
            damage += Of(count, SNCurve.Cycles(range, curve.CategoryPa, curve.CutOffPa, curve.Slope, ref none));
        }

        return damage;
    }

    /// <summary>Damage of rainflow cycles whose ranges are stresses in Pa.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static double Damage(SNCurve curve, IReadOnlyList<RainflowCycle> cyclesPa)
    {
        Guard.NotNull(curve, nameof(curve));
        NoSteps none = default;
        double damage = 0;
        foreach (RainflowCycle cycle in Guard.NotNull(cyclesPa, nameof(cyclesPa)))
        {
            damage += Of(cycle.Count, SNCurve.Cycles(cycle.Range, curve.CategoryPa, curve.CutOffPa, curve.Slope, ref none));
        }

        return damage;
    }

    /// <summary>Damage share of some cycles when so many lead to failure; 0 when the life is endless.</summary>
    internal static double Of(double cycles, double cyclesToFailure) =>
        double.IsPositiveInfinity(cyclesToFailure) ? 0 : cycles / cyclesToFailure;
}
