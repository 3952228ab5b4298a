using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fatigue;

/// <summary>Fatigue life of a detail under a constant shear stress range, EN 1993-1-9: one slope down to a cut-off.</summary>
/// <remarks>
/// N = 2·10⁶ (Δτ_C / Δτ)^m with m = 5, Δτ_C the detail category. Below the cut-off Δτ_L = (2/100)^(1/m) Δτ_C = 0.457 Δτ_C,
/// reached at N = 10⁸, a range does no damage. The curve is a lower bound: about 95 of 100 specimens last longer.
/// Partial factors are not applied. Source: EN 1993-1-9:2005, 7.1.
/// </remarks>
public sealed class SNCurve
{
    /// <summary>Cycles at which the detail category is anchored, 2·10⁶.</summary>
    public const double AnchorCycles = 2e6;

    /// <summary>Cycles at the cut-off, 10⁸.</summary>
    public const double CutOffCycles = 1e8;

    private SNCurve(double categoryPa, double slope, Basis basis)
    {
        CategoryPa = categoryPa;
        Slope = slope;
        Basis = basis;
        CutOffPa = categoryPa * Math.Pow(AnchorCycles / CutOffCycles, 1 / slope);
    }

    /// <summary>Bolts in single or double shear, threads not in the shear plane: category 100 MPa on the shank area, slope 5.</summary>
    public static SNCurve BoltsInShear { get; } = new(
        100e6,
        5,
        Basis.FromMemory("EN 1993-1-9:2005 Table 8.1 detail 15: bolts in shear, category 100, slope 5"));

    /// <summary>Detail category Δτ_C: the range endured for 2·10⁶ cycles.</summary>
    public Pressure Category => Pressure.FromPascals(CategoryPa);

    /// <summary>Cut-off Δτ_L: ranges below it do no damage.</summary>
    /// <example>Category 100 MPa: 45.7 MPa.</example>
    public Pressure CutOff => Pressure.FromPascals(CutOffPa);

    /// <summary>Slope m.</summary>
    public double Slope { get; }

    /// <summary>Where the category comes from.</summary>
    public Basis Basis { get; }

    internal double CategoryPa { get; }

    internal double CutOffPa { get; }

    /// <summary>A shear curve of another detail category, slope 5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The category is zero, negative or not finite.</exception>
    public static SNCurve Shear(Pressure category, Basis basis) => new(
        Guard.Positive(Si.Pascals(category), "Detail category", "Pa", nameof(category)), 5, Guard.NotNull(basis, nameof(basis)));

    /// <summary>Cycles to failure at a stress range; positive infinity below the cut-off.</summary>
    /// <param name="range">Stress range Δτ, from lowest to highest stress; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The range is negative or not finite.</exception>
    /// <example>Category 100: 150 MPa 263 374, 200 MPa 62 500, 300 MPa 8230 cycles.</example>
    public double CyclesAt(Pressure range)
    {
        NoSteps none = default;
        return Cycles(Guard.NotNegative(Si.Pascals(range), "Stress range", "Pa", nameof(range)), CategoryPa, CutOffPa, Slope, ref none);
    }

    /// <summary>Stress range endured for a number of cycles; the cut-off beyond 10⁸.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number of cycles is zero, negative or not finite.</exception>
    public Pressure RangeAt(double cycles)
    {
        double n = Guard.Positive(cycles, "Number of cycles", string.Empty, nameof(cycles));
        return Pressure.FromPascals(n >= CutOffCycles ? CutOffPa : CategoryPa * Math.Pow(AnchorCycles / n, 1 / Slope));
    }

    /// <summary>Damage sum of Palmgren and Miner: D = Σ nᵢ / Nᵢ, failure at D = 1; 0 when all lie below the cut-off.</summary>
    /// <remarks>The order of the loads is ignored; measured sums at failure scatter widely around 1.</remarks>
    /// <param name="cyclesPa">Rainflow cycles whose ranges are stresses in Pa.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <example>Category 100: 1000 cycles of 200 MPa and 1000 of 300 MPa: 0.016 + 0.1215 = 0.1375.</example>
    public double Damage(IReadOnlyList<RainflowCycle> cyclesPa) => Miner.Damage(this, cyclesPa);

    /// <summary>Its category and slope.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Category.Megapascals:0.##} MPa at 2 million cycles, slope {Slope:0.##}");

    internal static double Cycles<S>(double rangePa, double categoryPa, double cutOffPa, double slope, ref S log)
        where S : struct, ISteps
    {
        double cycles = rangePa < cutOffPa ? double.PositiveInfinity : AnchorCycles * Math.Pow(categoryPa / rangePa, slope);
        log.Add(FatigueSteps.Cycles, cycles);
        return cycles;
    }
}
