using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <summary>What the hole for a through bolt leaves of its own solid shaft.</summary>
/// <remarks>
/// D shaft, d hole, up to d = D/2. Without the hole: first yield T_0 = (π D³/16) · σ_y/√3.
/// Low: the edge of the hole yields. Torsion τ makes 4 τ there (small hole in a sheared plate), so
/// T = (π D³/16 − d D²/6) · σ_y/4; about a third of T_0 or less at d/D = 0.3 to 0.4.
/// Expected: the rest of the section yields, T = (π D³/16 − d D²/6) · σ_y/√3. High: the rest yields fully,
/// T = (π D³/12 − d D²/4) · σ_y/√3 at the highest yield strength. Local yield at the hole starts fatigue cracks before it twists
/// the shaft. Formulas: torsion of the net section with a narrow hole, and plane elasticity; the net section is remembered from
/// textbook tables of stress concentration.
/// </remarks>
internal sealed class CrossHole
{
    private static readonly Basis NetSection = Basis.FromMemory(
        "net section of a round bar with a cross-hole, textbook tables of stress concentration");

    private static readonly Basis ShearYield = Basis.Published("NASA TM-106943", "1995", "p. 16, shear yield 0.577 of tensile yield")
        .ReadVia("a public source file that quotes the page");

    private readonly StressBand yield;

    private CrossHole(double shaftM, double holeM, StressBand yield)
    {
        ShaftM = shaftM;
        HoleM = holeM;
        this.yield = yield;
    }

    /// <summary>Hole over shaft diameter, d/D.</summary>
    public double DiameterRatio => HoleM / ShaftM;

    /// <summary>Torque from the first yield at the edge of the hole to full yield of the rest of the section.</summary>
    public TorqueBand Torque
    {
        get
        {
            Band stress = yield.SiBand;
            return TorqueBand.OfSi(
                new Band(Net * stress.Low / 4, Net * stress.Expected / Root3, Plastic * stress.High / Root3), yield.Basis.With(NetSection));
        }
    }

    /// <summary>
    /// Torque that twists the shaft for good at one overload: low when the net section first yields, high when it yields fully,
    /// expected halfway. Local yield at the edge of the hole, far below, starts fatigue cracks but does not twist the shaft.
    /// </summary>
    public TorqueBand PermanentTwist
    {
        get
        {
            Band stress = yield.SiBand;
            return TorqueBand.OfSi(
                new Band(Net * stress.Low / Root3, ((Net * stress.Expected) + (Plastic * stress.Expected)) / 2 / Root3,
                    Plastic * stress.High / Root3),
                yield.Basis.With(NetSection));
        }
    }

    /// <summary>The same shaft without a hole: first yield to full yield.</summary>
    public TorqueBand WithoutHole
    {
        get
        {
            Band stress = yield.SiBand;
            return TorqueBand.OfSi(
                new Band(Math.PI / 16 * Cube * stress.Low / Root3, Math.PI / 16 * Cube * stress.Expected / Root3,
                    Math.PI / 12 * Cube * stress.High / Root3),
                yield.Basis.With(ShearYield));
        }
    }

    /// <summary>First yield with the hole over first yield without, (1 − 8 d/(3 π D)) · √3/4.</summary>
    /// <example>d/D = 0.4: 0.286.</example>
    public double ElasticShare => Net / (Math.PI / 16 * Cube) * Root3 / 4;

    internal double ShaftM { get; }

    internal double HoleM { get; }

    private static double Root3 => Math.Sqrt(3);

    private double Cube => ShaftM * ShaftM * ShaftM;

    private double Lost => HoleM * ShaftM * ShaftM;

    private double Net => (Math.PI / 16 * Cube) - (Lost / 6);

    private double Plastic => (Math.PI / 12 * Cube) - (Lost / 4);

    /// <summary>A hole through a solid shaft.</summary>
    /// <param name="shaftDiameter">Diameter D of the solid shaft.</param>
    /// <param name="holeDiameter">Diameter d of the hole; above 0, at most half of D.</param>
    /// <param name="yield">Tensile yield strength of the shaft.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is out of range.</exception>
    public static CrossHole Of(Length shaftDiameter, Length holeDiameter, StressBand yield)
    {
        double shaft = Guard.Positive(Si.Meters(shaftDiameter), "Shaft diameter", "m", nameof(shaftDiameter));
        double hole = Guard.Positive(Si.Meters(holeDiameter), "Hole diameter", "m", nameof(holeDiameter));
        Guard.NotNull(yield, nameof(yield));
        return hole <= shaft / 2 * (1 + 1e-9)
            ? new CrossHole(shaft, hole, yield)
            : throw Guard.OutOfRange(
                "Hole diameter", FormattableString.Invariant($"at most half the shaft, {shaft / 2:G6} m"), hole, "m", nameof(holeDiameter));
    }

    /// <summary>
    /// The hole of a through-shaft joint, taken as wide as its bolt; false for other layouts, an unknown shaft steel, or a hole above D/2.
    /// </summary>
    public static bool TryOf(ShearBoltJoint joint, [NotNullWhen(true)] out CrossHole? hole)
    {
        hole = null;
        return Guard.NotNull(joint, nameof(joint)).ShaftYield is { } yield && TryOf(joint, yield, out hole);
    }

    /// <summary>
    /// The hole of a through-shaft joint in a shaft of the given yield strength; false for other layouts or a hole above D/2.
    /// </summary>
    public static bool TryOf(ShearBoltJoint joint, StressBand yield, [NotNullWhen(true)] out CrossHole? hole)
    {
        Guard.NotNull(joint, nameof(joint));
        Guard.NotNull(yield, nameof(yield));
        hole = joint.Layout == JointLayout.ThroughShaft && joint.HoleM <= joint.RadiusM * (1 + 1e-9)
            ? new CrossHole(2 * joint.RadiusM, joint.HoleM, yield)
            : null;
        return hole is not null;
    }

    /// <summary>First yield with the hole over first yield without.</summary>
    internal static double ElasticShareOf(double diameterRatio) => (1 - (8 * diameterRatio / (3 * Math.PI))) * Math.Sqrt(3) / 4;
}
