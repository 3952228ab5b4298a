using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.ShearBolts;

/// <summary>Shear bolts in their joint: layout, number of planes, radius, and the state of hub, holes and faces.</summary>
/// <remarks>
/// Immutable; each With… method gives a changed copy. States that are not told are not known, and not known is never safe.
/// </remarks>
public sealed partial class ShearBoltJoint
{
    // A caliper may read 2 % too little.
    private const double CaliperShare = 0.98;

    private static readonly Basis Dimensions = Basis.Given("dimensions of the joint");

    private bool isOpen;
    private double seatM;
    private double holeM;

    private ShearBoltJoint(ShearBolt bolt, JointLayout layout, double radiusM, int bolts, int planesPerBolt)
    {
        Bolt = bolt;
        Layout = layout;
        RadiusM = radiusM;
        Bolts = bolts;
        PlanesPerBolt = planesPerBolt;
        ArePlanesStated = layout == JointLayout.ThroughShaft;
    }

    /// <summary>The bolt; all bolts of a joint are alike.</summary>
    public ShearBolt Bolt { get; private set; }

    /// <summary>How the bolts sit.</summary>
    public JointLayout Layout { get; }

    /// <summary>Radius of the shear planes: half the shaft diameter, half the bolt circle, or as given.</summary>
    public Length Radius => Length.FromMeters(RadiusM);

    /// <summary>Number of bolts.</summary>
    public int Bolts { get; }

    /// <summary>Shear planes of each bolt.</summary>
    public int PlanesPerBolt { get; private set; }

    /// <summary>How the bolts share the load.</summary>
    public HoleFit HoleFit { get; private set; }

    /// <summary>Friction between clamped faces beside the bolts; null when not stated, taken as none.</summary>
    public TorqueBand? FlangeFriction { get; private set; }

    /// <summary>Measured diameter of the hole the bolt sits in; null when not stated, taken as the bolt's own.</summary>
    public Length? HoleDiameter => seatM > 0 ? Length.FromMeters(seatM) : null;

    /// <summary>Gap between the faces at the shear plane; null when not stated, taken as none.</summary>
    public Length? StandOff => StandOffM > 0 ? Length.FromMeters(StandOffM) : null;

    /// <summary>True when the number of planes is stated or follows from the layout.</summary>
    public bool ArePlanesStated { get; private set; }

    /// <summary>True when the gap between the faces is stated, a gap of 0 included.</summary>
    public bool IsStandOffStated { get; private set; }

    /// <summary>Yield strength of the shaft a bolt crosses; null when not stated.</summary>
    public StressBand? ShaftYield { get; private set; }

    /// <summary>Basis of the layout's dimensions.</summary>
    public Basis Basis { get; } = Dimensions;

    internal double RadiusM { get; private set; }

    internal double StandOffM { get; private set; }

    /// <summary>Widest hole through the shaft, m; the bolt's own diameter unless a wider one is told.</summary>
    internal double HoleM => Math.Max(holeM, Bolt.DiameterM);

    /// <summary>The hole the bolt sits in, m; never thinner than the bolt.</summary>
    internal double SeatM => Math.Max(seatM, Bolt.DiameterM);

    /// <summary>The widest hole in which the bolt is still a fit, m.</summary>
    internal double WidestFitM => Bolt.LooseHoleM;

    internal bool IsLooseInHole => SeatM > WidestFitM + 1e-6;

    /// <summary>True when all bolts bear at once: close holes, and none measured too wide.</summary>
    internal bool IsTight => HoleFit == HoleFit.Tight && !IsLooseInHole;

    /// <summary>One bolt across a shaft: two planes, each at the surface of the shaft, so the radius is half its diameter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The shaft diameter is not finite or not above the bolt's diameter.</exception>
    public static ShearBoltJoint ThroughShaft(ShearBolt bolt, Length shaftDiameter)
    {
        double boltM = Guard.NotNull(bolt, nameof(bolt)).DiameterM;
        double shaftM = Guard.Positive(Si.Meters(shaftDiameter), "Shaft diameter", "m", nameof(shaftDiameter));
        return shaftM > boltM
            ? new ShearBoltJoint(bolt, JointLayout.ThroughShaft, shaftM / 2, 1, 2)
            : throw Guard.OutOfRange(
                "Shaft diameter", FormattableString.Invariant($"above the bolt's diameter {boltM:G6} m"), shaftM, "m",
                    nameof(shaftDiameter));
    }

    /// <summary>Bolts parallel to the shaft on a circle, one plane each.</summary>
    /// <param name="bolt">The bolt; all are alike.</param>
    /// <param name="boltCircleDiameter">Diameter (not radius) of the circle through the bolt centres.</param>
    /// <param name="bolts">Number of bolts, 1 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not finite or not above 0, or the number is out of range.</exception>
    public static ShearBoltJoint BoltCircle(ShearBolt bolt, Length boltCircleDiameter, int bolts) => new(
        Guard.NotNull(bolt, nameof(bolt)),
        JointLayout.BoltCircle,
        Guard.Positive(Si.Meters(boltCircleDiameter), "Bolt-circle diameter", "m", nameof(boltCircleDiameter)) / 2,
        Guard.Within(bolts, 1, 100, "Number of bolts", nameof(bolts)),
        1);

    /// <summary>One bolt at a radius, cut in one plane; for a fork that cuts it twice add <see cref="WithPlanes"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not finite or not above 0.</exception>
    public static ShearBoltJoint Tangential(ShearBolt bolt, Length radius) => new(
        Guard.NotNull(bolt, nameof(bolt)),
        JointLayout.Tangential,
        Guard.Positive(Si.Meters(radius), "Radius of the shear plane", "m", nameof(radius)),
        1,
        1);

    /// <summary>The same joint with another bolt.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The bolt is as thick as the shaft it crosses.</exception>
    public ShearBoltJoint With(ShearBolt bolt)
    {
        string? problem = Problem(Guard.NotNull(bolt, nameof(bolt)));
        return problem is not null ? throw new ArgumentOutOfRangeException(nameof(bolt), problem)
            : Changed(bolt, static (j, value) => j.Bolt = value);
    }

    /// <summary>
    /// The same joint with the measured hole of its bolt, which for a bolt through a shaft is the hole in the shaft as well.
    /// </summary>
    /// <remarks>
    /// A bolt in a hole wider than the loose clearance hole of its size (ISO 273, coarse; ASME B18.2.8, loose; both from memory) bends and
    /// is cut off its centre: nothing tells at how little it parts, see <see cref="ShearBoltFindings.LooseInHole"/>.
    /// </remarks>
    /// <param name="diameter">Measured diameter; a caliper may read 2 % less than the bolt.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The hole is thinner than the bolt, or not thinner than the shaft it crosses.
    /// </exception>
    public ShearBoltJoint WithHole(Length diameter) => WithHole(diameter, diameter);

    /// <summary>The same joint with a bushed hole: the bolt sits in the bush, the shaft is weakened by the wider hole.</summary>
    /// <param name="diameter">Measured diameter of the hole the bolt sits in.</param>
    /// <param name="inShaft">Diameter of the hole in the shaft; at least that of the hole in the bush.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A hole is thinner than what sits in it, or not thinner than the shaft it crosses.
    /// </exception>
    public ShearBoltJoint WithHole(Length diameter, Length inShaft)
    {
        double seat = Guard.Positive(Si.Meters(diameter), "Hole diameter", "m", nameof(diameter));
        double shaft = Guard.Positive(Si.Meters(inShaft), "Hole in the shaft", "m", nameof(inShaft));
        return seat < Bolt.DiameterM * CaliperShare
            ? throw Guard.OutOfRange(
                "Hole diameter", FormattableString.Invariant($"at least the bolt's {Bolt.DiameterM:G6} m"), seat, "m", nameof(diameter))
            : shaft < seat
            ? throw Guard.OutOfRange(
                "Hole in the shaft", FormattableString.Invariant($"at least the bolt's hole {seat:G6} m"), shaft, "m", nameof(inShaft))
            : Layout == JointLayout.ThroughShaft && shaft >= 2 * RadiusM
            ? throw Guard.OutOfRange("Hole in the shaft", FormattableString.Invariant($"below the shaft diameter {2 * RadiusM:G6} m"),
                shaft, "m", nameof(inShaft))
            : InHole(seat, shaft);
    }

    /// <summary>The same joint with a hole for its bolt and one through its shaft, either perhaps not measured.</summary>
    internal ShearBoltJoint InHole(double boltsM, double inShaftM) => Changed(j =>
    {
        j.seatM = boltsM;
        j.holeM = inShaftM;
    });

    /// <summary>The same joint with the hole made true to the bolt; the shaft keeps the hole it has.</summary>
    internal ShearBoltJoint WithTrueHole() => InHole(0, holeM);

    /// <summary>Why another bolt cannot lie in this joint; null when it can.</summary>
    internal string? Problem(ShearBolt bolt) => Layout != JointLayout.ThroughShaft || bolt.DiameterM < 2 * RadiusM
        ? null
        : Guard.RangeText(
            "Bolt diameter", FormattableString.Invariant($"below the shaft diameter {2 * RadiusM:G6} m"), bolt.DiameterM, "m");

    /// <summary>The same joint with so many shear planes in each bolt, 1 to 4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not 1 to 4.</exception>
    public ShearBoltJoint WithPlanes(int planesPerBolt)
    {
        Guard.Within(planesPerBolt, 1, 4, "Shear planes per bolt", nameof(planesPerBolt));
        return Changed(j =>
        {
            j.PlanesPerBolt = planesPerBolt;
            j.ArePlanesStated = true;
        });
    }

    /// <summary>The same joint with friction between clamped faces; it adds to the high end.</summary>
    public ShearBoltJoint WithFlangeFriction(TorqueBand friction)
    {
        Guard.NotNull(friction, nameof(friction));
        return Changed(friction, static (j, value) => j.FlangeFriction = value);
    }

    /// <summary>The same joint with a known fit of the holes.</summary>
    public ShearBoltJoint WithHoleFit(HoleFit fit) => Changed(fit, static (j, value) => j.HoleFit = value);

    /// <summary>The same joint with a gap between the faces at the shear plane.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The gap is negative or not finite.</exception>
    public ShearBoltJoint WithStandOff(Length gap)
    {
        double gapM = Guard.NotNegative(Si.Meters(gap), "Gap between the faces", "m", nameof(gap));
        return Changed(j =>
        {
            j.StandOffM = gapM;
            j.IsStandOffStated = true;
        });
    }

    /// <summary>The same joint with the yield strength of the shaft the bolt crosses: it tells what the cross hole leaves of it.</summary>
    public ShearBoltJoint WithShaftYield(StressBand yield)
    {
        Guard.NotNull(yield, nameof(yield));
        return Changed(yield, static (j, value) => j.ShaftYield = value);
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Layout}: {Bolts} × {Bolt} at {RadiusM * 1000:G4} mm radius");

    /// <summary>This very object, which nobody else holds yet: until it is closed, each change is made in it.</summary>
    internal ShearBoltJoint OpenItself()
    {
        isOpen = true;
        return this;
    }

    internal ShearBoltJoint Closed()
    {
        isOpen = false;
        return this;
    }

    private ShearBoltJoint Changed(Action<ShearBoltJoint> change) => Changed(change, static (j, own) => own(j));

    private ShearBoltJoint Changed<T>(T value, Action<ShearBoltJoint, T> change)
    {
        ShearBoltJoint changed = isOpen ? this : (ShearBoltJoint)MemberwiseClone();
        change(changed, value);
        return changed;
    }
}
