using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>Coil springs side by side: F = n · k · (free length - length).</summary>
internal sealed class CoilPack : SpringPack
{
    private CoilPack(CoilSpring spring, int count, Band factor, BandBasis basis)
        : base(count, spring.FreeM, spring.SolidM, factor, basis) => Spring = spring;

    /// <summary>One of the springs.</summary>
    public CoilSpring Spring { get; }

    /// <summary>Coil springs side by side.</summary>
    /// <param name="spring">One spring.</param>
    /// <param name="count">Springs; 1 to 48.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of its range.</exception>
    /// <example>9 springs of 160 N/mm, 5 mm compressed: 7200 N.</example>
    public static new CoilPack Of(CoilSpring spring, int count)
    {
        Band rate = Guard.NotNull(spring, nameof(spring)).RateNPerM;
        return new CoilPack(
            spring, Guard.Within(count, 1, 48, "Number of springs", nameof(count)), rate.Times(1 / rate.Expected), spring.RateBasis);
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Count} × {Spring}");

    // Usual clash allowance of coil springs.
    internal override double ReserveShare => 0.10;

    internal override double NominalN<S>(double deflectionM, ref S log)
    {
        double one = Spring.RateNPerM.Expected * Math.Max(0, deflectionM);
        log.Add(ClutchInputs.Rate, Spring.RateNPerM.Expected);
        log.Add(ClutchSteps.CoilForce, one);
        return Count * one;
    }

    internal override CalculationStep ClampStep => ClutchSteps.ClampOfCoils;

    internal override CalculationStep NeededStep => ClutchInputs.CoilsNeeded;

    internal override double RateNPerM(double deflectionM) => Count * Spring.RateNPerM.Expected;

    internal override double DeflectionM(double forceN)
    {
        double m = forceN / (Count * Spring.RateNPerM.Expected * Factor.Expected);
        return m < TravelM ? m : double.NaN;
    }

    private protected override double LeastN(double lowM, double highM) => NominalN(lowM);

    private protected override double MostN(double lowM, double highM) => NominalN(highM);

    private protected override SpringPack Rescaled(Band factor, BandBasis basis) => new CoilPack(Spring, Count, factor, basis);
}
