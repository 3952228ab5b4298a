using Driveline.Provenance;
using Driveline.Quantities;
using MathNet.Numerics.RootFinding;

namespace Driveline.Clutches;

/// <summary>Stacks of disc springs: n discs nested in parallel, i such sets in series, several stacks side by side.</summary>
/// <remarks>
/// Parallel adds force, series adds travel: free length i · (l0 + (n - 1) · t'), travel i · (l0 - t').
/// Friction between the layers and at the edges: F_R = n · F / (1 ∓ wM · (n - 1) ∓ wR), upper signs when loading.
/// wM 0.002 to 0.030 and wR 0.010 to 0.050 over all series, low when greased (from memory of the standard); the low end of the
/// force takes the unloading sign, the high end the loading sign, and the expected force has no friction.
/// </remarks>
internal sealed class DiscPack : SpringPack
{
    internal const double MostLayerFriction = 0.030;
    internal const double MostEdgeFriction = 0.050;

    private static readonly Basis FrictionBasis = Basis.FromMemory("disc-spring layer and edge friction, EN 16984");

    private DiscPack(DiscSpring spring, int parallel, int series, int count, Band factor, BandBasis basis)
        : base(count, FreeLengthM(spring, parallel, series), FreeLengthM(spring, parallel, series) - (series * spring.Shape.ConeM), factor,
            basis)
    {
        Spring = spring;
        Parallel = parallel;
        Series = series;
    }

    /// <summary>One disc.</summary>
    public DiscSpring Spring { get; }

    /// <summary>Discs nested the same way round in a set, n.</summary>
    public int Parallel { get; }

    /// <summary>Sets facing alternate ways, i.</summary>
    public int Series { get; }

    /// <summary>Stacks of disc springs.</summary>
    /// <param name="spring">One disc.</param>
    /// <param name="parallel">Discs nested in a set, n; 1 to 5 (more than 3 is unusual).</param>
    /// <param name="series">Sets in series, i; 1 to 50.</param>
    /// <param name="stacks">Stacks side by side; 1 to 48.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of its range.</exception>
    public static DiscPack Of(DiscSpring spring, int parallel, int series, int stacks)
    {
        Guard.NotNull(spring, nameof(spring));
        Guard.Within(parallel, 1, 5, "Discs in parallel", nameof(parallel));
        Guard.Within(series, 1, 50, "Sets in series", nameof(series));
        Guard.Within(stacks, 1, 48, "Number of stacks", nameof(stacks));
        Band tolerance = spring.ForceTolerance;
        var factor = new Band(
            tolerance.Low * FrictionFactor(parallel, MostLayerFriction, MostEdgeFriction, false),
            1,
            tolerance.High * FrictionFactor(parallel, MostLayerFriction, MostEdgeFriction, true));
        BandBasis basis = BandBasis.Combine(
            DiscSpring.ForceBasis,
            new BandBasis(FrictionBasis, DiscSpring.ForceBasis.Expected, FrictionBasis, BandEnd.Limit, BandEnd.Limit));
        return new DiscPack(spring, parallel, series, stacks, factor, basis);
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Count} × ({Parallel} parallel × {Series} series) {Spring}");

    /// <summary>Force of a set of n discs over n times the force of one.</summary>
    internal static double FrictionFactor(int parallel, double layer, double edge, bool loading)
    {
        double loss = (layer * (parallel - 1)) + edge;
        return 1 / (loading ? 1 - loss : 1 + loss);
    }

    // The tables of the standard end at 0.75 of the cone height.
    internal override double ReserveShare => 0.25;

    internal override double NominalN<S>(double deflectionM, ref S log)
    {
        log.Add(ClutchInputs.Series, Series);
        log.Add(ClutchInputs.Parallel, Parallel);
        return Count * Parallel * DiscSpringKernel.ForceN(Spring.Shape, Math.Max(0, deflectionM) / Series, ref log);
    }

    internal override CalculationStep ClampStep => ClutchSteps.ClampOfDiscs;

    internal override CalculationStep NeededStep => ClutchInputs.DiscsNeeded;

    internal override double RateNPerM(double deflectionM) =>
        Count * Parallel * DiscSpringKernel.RateNPerM(Spring.Shape, deflectionM / Series) / Series;

    internal override double DeflectionM(double forceN)
    {
        double nominal = forceN / Factor.Expected;
        double top = Math.Min(TravelM, Series * DiscSpringKernel.PeakM(Spring.Shape));
        double most = NominalN(top);
        if (nominal > most || (nominal >= most && top >= TravelM))
        {
            return double.NaN;
        }

        return nominal <= 0 ? 0 : nominal >= most ? top : Brent.FindRoot(s => NominalN(s) - nominal, 0, top, 1e-16, 300);
    }

    // Where the force has a minimum of its own, it lies as far beyond flat as its peak lies before it.
    private protected override double LeastN(double lowM, double highM) => Math.Min(NominalN(lowM), NominalN(highM));

    private protected override double MostN(double lowM, double highM)
    {
        double most = Math.Max(NominalN(lowM), NominalN(highM));
        double peak = Series * DiscSpringKernel.PeakM(Spring.Shape);
        return peak > lowM && peak < highM ? Math.Max(most, NominalN(peak)) : most;
    }

    private protected override SpringPack Rescaled(Band factor, BandBasis basis) =>
        new DiscPack(Spring, Parallel, Series, Count, factor, basis);

    private static double FreeLengthM(DiscSpring spring, int parallel, int series) =>
        series * (spring.FreeHeightM + ((parallel - 1) * spring.ReducedM));
}
