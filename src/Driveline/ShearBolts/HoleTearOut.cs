using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>Torque at which the bolt tears out of its yoke or hub, which is then broken: the part that must outlast the bolt.</summary>
/// <remarks>
/// T = m · k_1 · α_b · f_u · d · t · r, with m planes that carry [-], f_u tensile strength of the wall [Pa], d bolt diameter [m], t wall
/// [m],
/// r radius of the planes [m]; k_1 = min(2.8 e/d_0 − 1.7; 2.5), α_b = min(e/(3 d_0); 1), d_0 hole [m], e from the hole's centre to the
/// nearest
/// edge [m], taken along and across the load. EN 1993-1-8:2005, Table 3.4, end bolt, safety factor taken off; the bolt's own strength left
/// out of α_b, because the bolt parts in shear. Tests of plates near their edge carry more: the rule is on the safe side.
/// An edge that is not told may be anything: low at the code's least, 1.2 d_0, the rest with room enough. Of a wall whose yield strength
/// alone
/// is told the tensile strength is at least that, and nothing bounds it above. Worn holes: low counts one bolt.
/// </remarks>
/// <example>
/// Two walls of 3 mm with 360 MPa, 9.525 mm bolt through a 31.75 mm shaft, e = 3 d: 2 · 2.5 · 360 MPa · 9.525 · 3 mm² · 15.875 mm = 817
/// N·m.
/// </example>
internal sealed class HoleTearOut
{
    private const double MostK1 = 2.5;
    private const double LeastEdge = 1.2;

    private static readonly Basis Clause = Basis.Published("EN 1993-1-8", "2005", "Table 3.4, bearing").ReadVia("two technical pages");

    private static readonly Basis EdgeNotKnown = Basis.CommonPractice("edge distance not known: at least the code's 1.2 hole diameters");

    private HoleTearOut(ShearBoltJoint joint)
    {
        Joint = joint;
        double all = joint.Bolts * joint.PlanesPerBolt;
        double one = joint.IsTight ? all : joint.PlanesPerBolt;
        double edge = joint.YokeEdgeM;
        double low = FactorOf(edge > 0 ? edge / joint.SeatM : LeastEdge);
        double rest = edge > 0 ? low : MostK1;
        StressBand wall = joint.YokeTensile ?? AtLeast(joint.YokeYield!);
        Band stress = wall.SiBand;
        BandBasis basis = wall.Basis.With(Clause).With(joint.Basis);
        Torque = TorqueBand.OfSi(
            new Band(At(one, low, stress.Low), At((one + all) / 2, rest, stress.Expected), At(all, rest, stress.High)),
            edge > 0 ? basis : basis.With(EdgeNotKnown));
    }

    /// <summary>The joint.</summary>
    public ShearBoltJoint Joint { get; }

    /// <summary>
    /// Torque at which the bolt tears out of the yoke; expected and high unbounded while only its yield strength is told.
    /// </summary>
    public TorqueBand Torque { get; }

    /// <summary>The tear-out of a joint; false when the wall or both its strengths are not told.</summary>
    public static bool TryOf(ShearBoltJoint joint, [NotNullWhen(true)] out HoleTearOut? tearOut)
    {
        Guard.NotNull(joint, nameof(joint));
        tearOut = joint.YokeThicknessM > 0 && (joint.YokeTensile ?? joint.YokeYield) is not null ? new HoleTearOut(joint) : null;
        return tearOut is not null;
    }

    /// <summary>k_1 · α_b of a hole by its edge distance over its diameter; 0 where the hole cuts the edge.</summary>
    internal static double FactorOf(double edgeOverHole) =>
        Math.Max(0, Math.Min((2.8 * edgeOverHole) - 1.7, MostK1)) * Math.Min(edgeOverHole / 3, 1);

    private static StressBand AtLeast(StressBand yield) => StressBand.OfSi(
        new Band(yield.SiBand.Low, double.PositiveInfinity, double.PositiveInfinity), yield.Basis);

    private double At(double planes, double factor, double tensilePa) => factor <= 0 ? 0
        : planes * factor * tensilePa * Joint.Bolt.DiameterM * Joint.YokeThicknessM * Joint.RadiusM;
}
