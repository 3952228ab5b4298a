using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>What one shear plane of a bolt takes before it parts.</summary>
/// <remarks>
/// F = κ · R_m · A. Low: smallest area and ratio at the lowest tensile strength. High: largest of each. Shank areas run from the
/// thinnest to the thickest body of the bolt's style. A threaded plane uses the root or the stress area for low, as the
/// code's ratio asks (EN 1993-1-8, table 3.4), 1.08 stress areas for expected, and the larger of 1.16 stress areas and 0.89 of the shank
/// for
/// high, as tests of bolts with the thread in the plane give; none of them passes the plain shank. The code's low ratio belongs to
/// the least strength promised; of a quenched bolt whose own hardness was measured it is at most 0.56. An unknown plane spans thread and
/// shank
/// (and a neck whose diameter is told), its expected value midway. An unknown neck may be anything up to the full shank: low 0, expected
/// taken as high.
/// </remarks>
public sealed class ShearPlane
{
    // The codes' ratios go with the least strength promised, a measured hardness with the bolt's own: 0.62 less two standard deviations of
    // 0.03.
    private const double LeastTested = 0.56;

    private static readonly Basis Tests = Basis.FromMemory("mean ratio 0.62 less two standard deviations (0.03) of single-bolt tests");

    private ShearPlane(ShearBolt bolt, PlaneEnd low, PlaneEnd expected, PlaneEnd high, BandBasis basis)
    {
        Bolt = bolt;
        Low = low;
        Expected = expected;
        High = high;
        Load = ForceBand.OfSi(new Band(low.LoadN, expected.LoadN, high.LoadN), basis);
    }

    /// <summary>The bolt.</summary>
    public ShearBolt Bolt { get; }

    /// <summary>Breaking load of one plane.</summary>
    /// <example>1/2-13 UNC SAE 2 hexagon cap screw through the shank: at least 37.7 kN.</example>
    public ForceBand Load { get; }

    internal PlaneEnd Low { get; }

    internal PlaneEnd Expected { get; }

    internal PlaneEnd High { get; }

    /// <summary>One plane of a bolt; a bolt computes it once.</summary>
    public static ShearPlane Of(ShearBolt bolt) => Guard.NotNull(bolt, nameof(bolt)).Plane;

    /// <summary>The bolt and the load at which it shears in one plane, with its unit.</summary>
    public override string ToString() => Bolt + ": " + Load;

    internal static ShearPlane Computed(ShearBolt bolt)
    {
        if (bolt.FittedSpringPin is { } pin)
        {
            return OfSpringPin(bolt, pin);
        }

        if (bolt.NeedsNeck)
        {
            return Cut(bolt, PlaneThrough.Shank, PlaneAreas.Neck(bolt));
        }

        return bolt.PlaneThrough switch
        {
            PlaneThrough.Shank => Cut(bolt, PlaneThrough.Shank, PlaneAreas.Plain(bolt)),
            PlaneThrough.Thread => Cut(bolt, PlaneThrough.Thread, PlaneAreas.Threaded(bolt)),
            _ => Unknown(bolt),
        };
    }

    internal static double ShearStrengthPa<S>(double ratio, double tensilePa, ref S log)
        where S : struct, ISteps
    {
        log.Add(ShearBoltSteps.Ratio, ratio);
        log.Add(ShearBoltSteps.Tensile, tensilePa);
        double tau = ratio * tensilePa;
        log.Add(ShearBoltSteps.Shear, tau);
        return tau;
    }

    private static ShearPlane OfSpringPin(ShearBolt bolt, SpringPin pin)
    {
        // The published load is for two planes; the area is nominal and only carries it.
        double areaM2 = Math.PI / 4 * bolt.DiameterM * bolt.DiameterM;
        var low = new PlaneEnd(areaM2, 1, pin.MinimumDoubleShearN / 2 / areaM2);
        var none = new PlaneEnd(areaM2, 1, double.PositiveInfinity);
        return new ShearPlane(bolt, low, none, none, BandBasis.Of(pin.PublishedLoad.Basis));
    }

    private static ShearPlane Cut(ShearBolt bolt, PlaneThrough plane, PlaneAreas areas)
    {
        ShearRatio ratio = ShearRatios.Of(bolt.Material.ShearClass, plane);
        Band kappa = ratio.Ratio.SiBand;
        Band tensile = bolt.Material.Tensile?.SiBand ?? new Band(0, double.PositiveInfinity, double.PositiveInfinity);
        bool isMeasured = bolt.Material is { Family: MaterialFamily.QuenchedSteel, Grade: null, RodMaterial: null };
        BandBasis strength = bolt.Material.Tensile?.Basis ?? BandBasis.Of(Basis.FromMemory("strength of the bolt not known"));
        return new ShearPlane(
            bolt,
            new PlaneEnd(areas.LowM2, isMeasured ? Math.Min(kappa.Low, LeastTested) : kappa.Low, tensile.Low),
            new PlaneEnd(areas.ExpectedM2, kappa.Expected, tensile.Expected),
            new PlaneEnd(areas.HighM2, kappa.High, tensile.High),
            BandBasis.Combine(BandBasis.Combine(strength, isMeasured ? WithLow(ratio.Ratio.Basis) : ratio.Ratio.Basis), areas.AreaBasis));
    }

    private static BandBasis WithLow(BandBasis basis) =>
        new(Basis.Weakest(basis.Low, Tests), basis.Expected, basis.High, BandEnd.Interval95, basis.HighEnd);

    private static ShearPlane Unknown(ShearBolt bolt)
    {
        ShearPlane span = Span(
            bolt, Cut(bolt, PlaneThrough.Thread, PlaneAreas.Threaded(bolt)), Cut(bolt, PlaneThrough.Shank, PlaneAreas.Plain(bolt)));
        return bolt.NeckDiameterM > 0 ? Span(bolt, span, Cut(bolt, PlaneThrough.Neck, PlaneAreas.Neck(bolt))) : span;
    }

    private static ShearPlane Span(ShearBolt bolt, ShearPlane first, ShearPlane second)
    {
        PlaneEnd low = first.Low.LoadN <= second.Low.LoadN ? first.Low : second.Low;
        PlaneEnd high = first.High.LoadN >= second.High.LoadN ? first.High : second.High;

        // Both expected ratios are the same, so the middle of the areas is the middle of the loads.
        PlaneEnd a = first.Expected, b = second.Expected;
        var expected = new PlaneEnd((a.AreaM2 + b.AreaM2) / 2, a.Ratio, a.TensilePa);
        return new ShearPlane(
            bolt,
            low,
            expected,
            high,
            BandBasis.Combine(BandBasis.Combine(first.Load.Basis, second.Load.Basis), new BandBasis(
                first.Load.Basis.Low,
                Basis.FromMemory("shear plane not known: midway between the parts it may cut"),
                second.Load.Basis.High,
                BandEnd.Limit,
                BandEnd.Limit)));
    }
}
