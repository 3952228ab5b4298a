using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Chains;

/// <summary>A shear-bolt joint in its place in the driveline.</summary>
/// <remarks>
/// What is not known about the bolt bars a Yes: the shear plane, the grade, head marks of another grade, the hub, the neck of a special;
/// for bolts beside
/// the shaft the number of planes and the gap between the faces; for a bolt through its shaft the steel around the cross-hole.
/// </remarks>
public sealed class ShearBoltDevice : ProtectiveDevice
{
    private static readonly string[] ShaftSteel = [BoltFact.ShaftYieldStrength];

    private readonly IEnumerable<Finding> also;
    private IReadOnlyList<Finding>? findings;
    private IReadOnlyList<Part>? impliedParts;

    private ShearBoltDevice(string name, BreakTorque breakTorque, FactPlace? place, IEnumerable<Finding> also)
        : base(name)
    {
        BreakTorque = breakTorque;
        Place = place;
        this.also = also;
    }

    /// <summary>The break torque of the joint, with its own findings and calculation sheet.</summary>
    public BreakTorque BreakTorque { get; }

    /// <inheritdoc/>
    public override FactPlace? Place { get; }

    /// <inheritdoc/>
    public override DeviceKind Kind => DeviceKind.ShearBolt;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway => !BreakTorque.IsKnown ? null
        : NeverLetsGo ? TorqueBand.OfSi(
            new Band(BreakTorque.Torque.SiBand.Low, double.PositiveInfinity, double.PositiveInfinity), BreakTorque.Torque.Basis)
        : BreakTorque.Torque;

    /// <inheritdoc/>
    public override TorqueBand? Running => BreakTorque.IsKnown ? BreakTorque.Torque : null;

    /// <inheritdoc/>
    public override bool IsStuck => NeverLetsGo;

    /// <inheritdoc/>
    public override bool NeverLetsGo => BreakTorque.Joint.Hub == HubState.Seized;

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => AfterTrip.TorqueGone;

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => findings ??= Array.AsReadOnly(AllFindings(Name, BreakTorque, Place, also));

    /// <inheritdoc/>
    public override TorqueBand? InGoodOrder => BreakTorque.IsKnown ? BreakTorque.IfHubFree : null;

    /// <inheritdoc/>
    public override bool IsIdentified => BreakTorque.IsKnown
        && (BreakTorque.Joint.Bolt.Material.IsIdentified || BreakTorque.Joint.Bolt.FittedSpringPin is not null);

    /// <inheritdoc/>
    public override IReadOnlyList<Part> ImpliedParts => impliedParts
        ?? Interlocked.CompareExchange(ref impliedParts, Implied(BreakTorque.Joint), null) ?? impliedParts;

    /// <inheritdoc/>
    public override IReadOnlyList<CalculationLine> Sheet() => BreakTorque.IsKnown ? BreakTorque.Sheet() : [];

    /// <inheritdoc/>
    public override IReadOnlyDictionary<string, BandBasis> SheetBases() => BreakTorque.SheetBases();

    /// <inheritdoc/>
    public override IReadOnlyList<TorqueDoubt> Doubts() => BreakTorque.IsKnown ? BreakTorque.Doubts() : [];

    /// <summary>Holes that go oval under so high a work peak, and that the bolt yields under it.</summary>
    internal override IReadOnlyList<Finding> BarsUnder(double workHighNm)
    {
        bool isOval = HoleBearing.TryOf(BreakTorque.Joint, out HoleBearing? bearing) && bearing.FirstOvalNm <= workHighNm;
        bool isYielding = !NeverLetsGo && !double.IsPositiveInfinity(workHighNm) && BoltFatigue.YieldsAtEachPeak(BreakTorque, workHighNm);
        if (!isOval && !isYielding)
        {
            return [];
        }

        var bars = new List<Finding>(2);
        if (isOval)
        {
            bars.Add(Finding.Of(ShearBoltFindings.HolesOvalInWork, Severity.Warning).Barring(Bars.Quiet).WithSettledBy(Measurements.HoleFit)
                .With("oval", QuantityKind.Torque, bearing!.FirstOvalNm)
                .With("work", QuantityKind.Torque, workHighNm)
                .WithBecause(BoltFact.YokeThickness, BoltFact.YokeYieldStrength).At(Place));
        }

        if (isYielding)
        {
            bars.AddRange(BoltFatigue.LowerBoundLife(BreakTorque, workHighNm, 0).Findings
                .Where(f => f.IsBarring(Bars.Quiet)).Select(f => f.At(Place)));
        }

        return bars;
    }

    /// <summary>A joint in its place, under a name by which people know it.</summary>
    public static ShearBoltDevice Of(string name, ShearBoltJoint joint) => new(name, BreakTorque.Of(joint), null, []);

    /// <summary>
    /// The joint with the bolt that the manual names in the place of the fitted one: a plain bolt is cut where the fitted plain bolt is.
    /// </summary>
    /// <returns>The device; null while the size of the named bolt is not known, or its facts contradict each other.</returns>
    /// <exception cref="ArgumentException">The named bolt is as thick as the shaft it crosses.</exception>
    public ShearBoltDevice? Specified(StatedBolt named) => Named(named) is { } bolt
        ? Of("specified bolt", BreakTorque.Joint.With(bolt))
        : null;

    /// <summary>The same, and why the bolt that the manual names cannot lie in this joint; null when it can.</summary>
    internal ShearBoltDevice? Specified(StatedBolt named, out string? problem)
    {
        problem = null;
        return Named(named) is { } bolt ? Specified(bolt, out problem) : null;
    }

    /// <summary>The same of a bolt that is known.</summary>
    internal ShearBoltDevice? Specified(ShearBolt bolt, out string? problem)
    {
        problem = BreakTorque.Joint.Problem(bolt);
        return problem is null ? Of("specified bolt", BreakTorque.Joint.With(bolt)) : null;
    }

    internal static ShearBoltDevice Of(string name, BreakTorque breakTorque) => new(name, breakTorque, null, []);

    /// <summary>A device in the same joint whose bolt is as thick, and of other material: it implies the same parts.</summary>
    internal static ShearBoltDevice OfOtherMaterial(BreakTorque breakTorque, ShearBoltDevice fitted) =>
        new(fitted.Name, breakTorque, null, []) { impliedParts = fitted.ImpliedParts };

    private ShearBolt? Named(StatedBolt named) => Guard.NotNull(named, nameof(named)).InPlaceOf(BreakTorque.Joint.Bolt);

    /// <summary>A joint as it was seen.</summary>
    /// <param name="name">Name by which people know it.</param>
    /// <param name="joint">The joint.</param>
    /// <param name="place">Where its facts stand.</param>
    /// <param name="also">What else is to be said of the bolt, such as what the marks on its head mean.</param>
    internal static ShearBoltDevice Of(string name, ShearBoltJoint joint, FactPlace? place, IEnumerable<Finding> also) =>
        new(name, BreakTorque.Of(joint), place, also);

    /// <summary>The same device with another joint in its place.</summary>
    internal ShearBoltDevice With(ShearBoltJoint joint) => (ShearBoltDevice)Of(Name, joint, Place, []).Numbered(PartNumber);

    /// <summary>The same device at another radius of its planes, for a row of a study.</summary>
    /// <remarks>No finding that bars a Yes rests on the radius, so that both have the same ones.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The joint has no such radius.</exception>
    internal ShearBoltDevice AtRadius(double radiusM)
    {
        var moved = new ShearBoltDevice(Name, BreakTorque.AtRadius(radiusM), Place, also);
        moved.ShareBars(this);
        return (ShearBoltDevice)moved.Numbered(PartNumber);
    }

    private static Finding[] AllFindings(string name, BreakTorque breakTorque, FactPlace? place, IEnumerable<Finding> also)
    {
        ShearBoltJoint joint = breakTorque.Joint;
        var findings = new List<Finding>(breakTorque.Findings.Count + 2);
        findings.AddRange(breakTorque.Findings);
        if (!joint.ArePlanesStated)
        {
            findings.Add(Finding.NotKnown(DeviceFindings.ShearPlanesNotKnown).WithSettledBy(Measurements.PlaneThrough).With("name", name)
                .WithBecause(BoltFact.Planes));
        }

        if (joint.Layout != JointLayout.ThroughShaft && !joint.IsStandOffStated)
        {
            findings.Add(Finding.NotKnown(DeviceFindings.StandOffNotKnown).Barring(Bars.Quiet).WithSettledBy(Measurements.HoleFit)
                .With("name", name).WithBecause(BoltFact.StandOff));
        }

        if (joint.Layout == JointLayout.ThroughShaft && joint.ShaftYield is null)
        {
            findings.Add(Finding.Whole(DeviceFindings.ShaftAtCrossHoleNotKnown, Severity.Warning, Bars.Guards,
                Measurements.ShaftSteelAtHole, ShaftSteel, FindingParameter.Of("name", name)));
        }

        findings.AddRange(also);
        Finding[] placed = findings.ToArray();
        for (int k = 0; k < placed.Length; k++)
        {
            placed[k] = placed[k].At(place);
        }

        return placed;
    }

    private static IReadOnlyList<Part> Implied(ShearBoltJoint joint)
    {
        IReadOnlyList<Part> shaft = AtCrossHole(joint);
        IReadOnlyList<Part> yoke = AtYoke(joint);
        return shaft.Count == 0 ? yoke : yoke.Count == 0 ? shaft : [.. shaft, .. yoke];
    }

    private static IReadOnlyList<Part> AtCrossHole(ShearBoltJoint joint)
    {
        if (joint.Layout != JointLayout.ThroughShaft || joint.ShaftYield is null)
        {
            return [];
        }

        Part shaft = Part.Open(PartKind.ShaftAtCrossHole, "shaft at the bolt hole");
        return [(CrossHole.TryOf(joint, out CrossHole? hole) ? shaft.WithLimit(PartLimit.Section(hole.PermanentTwist)) : shaft).Closed()];
    }

    private static IReadOnlyList<Part> AtYoke(ShearBoltJoint joint) => HoleTearOut.TryOf(joint, out HoleTearOut? tearOut)
        ? [Part.Of(PartKind.Other, "yoke at the bolt hole").WithLimit(PartLimit.Section(tearOut!.Torque))]
        : [];
}
