using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Chains;

/// <content>What the facts of a fitted bolt come to: its joint, and it as a device.</content>
public sealed partial class FittedBolt
{
    private ProtectiveDevice? device;
    private IReadOnlyList<FactConflict>? conflicts;

    /// <summary>Facts that contradict each other, those of its bolt first; empty when all fit.</summary>
    public IReadOnlyList<FactConflict> Conflicts => conflicts ??= AllConflicts();

    /// <summary>The joint that this is; null while size, layout or radius is not known, and when facts contradict each other.</summary>
    public ShearBoltJoint? Joint => Conflicts.Count == 0 && Placed.Bolt is { } bolt && LaidOut(bolt) is { } joint ? Told(joint) : null;

    /// <summary>
    /// It as a device of a driveline, always the same one: a <see cref="ShearBoltDevice"/>, or one that is not identified.
    /// </summary>
    public ProtectiveDevice Device => device ?? Interlocked.CompareExchange(ref device, Built(), null) ?? device;

    // Most bolts have none.
    private IReadOnlyList<FactConflict> AllConflicts()
    {
        FactConflict[] own = FittedBoltConflicts.Of(this).ToArray();
        return own.Length == 0 ? Stated.Conflicts : [.. Stated.Conflicts, .. own];
    }

    private ProtectiveDevice Built() => (Joint is { } joint ? ShearBoltDevice.Of(Name, joint, Place, Stated.MarkFindings)
        : (ProtectiveDevice)StatedDevice.BoltNotLaidOut(Name, [.. Conflicts.Select(Named), .. Stated.MarkFindings], Place, AsIfLaidOut()))
        .Numbered(Stated.PartNumber);

    // What the lengths of bolt, thread and grip tell of the plane.
    private StatedBolt Placed => Stated.PlaneThrough == PlaneThrough.NotKnown && ShearPlanePlace.Of(this) is var plane
        && plane != PlaneThrough.NotKnown ? Stated.With(plane) : Stated;

    // Which bolt it is and whether hub and holes are in order, of a bolt whose layout nobody told: its torque counts nowhere.
    private ShearBoltDevice? AsIfLaidOut()
    {
        if (Conflicts.Count > 0)
        {
            return null;
        }

        // A bolt of unknown size fills its hole.
        ShearBolt bolt = Placed.Bolt ?? ShearBolt.Pin(HoleDiameter ?? Length.FromMillimeters(10), FastenerMaterial.NotKnown);
        Length shaft = Length.FromMeters(4 * Math.Max(Si.Meters(bolt.Diameter), HoleDiameter is { } wide ? Si.Meters(wide) : 0));
        ShearBoltJoint joint = Dated(ShearBoltJoint.ThroughShaft(bolt, shaft).OpenItself().WithHub(Hub).WithHoleFit(HoleFit));
        joint = HubFriction is { } friction ? joint.WithHubFriction(friction) : joint;
        joint = HoleDiameter is { } hole ? joint.WithHole(hole) : joint;
        return ShearBoltDevice.Of(Name, joint.Closed(), Place, []);
    }

    private Finding Named(FactConflict conflict) => Finding.Of(ShearBoltFindings.FactsContradict, Severity.Danger)
        .Barring(Bars.Both).WithSettledBy(Measurements.IdentifyDevice)
        .With("name", Name).With("fact", conflict.Fact).With("other", conflict.Other)
        .WithBecause(conflict.Fact, conflict.Other);

    private ShearBoltJoint? LaidOut(ShearBolt bolt)
    {
        Length? circle = BoltCircleDiameter ?? (Radius is { } half ? half * 2 : null);
        return Layout switch
        {
            JointLayout.ThroughShaft when ShaftDiameter is { } shaft => ShearBoltJoint.ThroughShaft(bolt, shaft),
            JointLayout.BoltCircle when circle is { } diameter && Bolts is { } bolts => ShearBoltJoint.BoltCircle(bolt, diameter, bolts),
            JointLayout.Tangential when Radius is { } at => ShearBoltJoint.Tangential(bolt, at),
            _ => null,
        };
    }

    private ShearBoltJoint Told(ShearBoltJoint joint)
    {
        joint = Dated(joint.OpenItself().WithHub(Hub).WithHoleFit(HoleFit));
        joint = Planes is { } planes ? joint.WithPlanes(planes) : joint;
        joint = HubFriction is { } friction ? joint.WithHubFriction(friction) : joint;
        joint = StandOff is { } gap ? joint.WithStandOff(gap) : joint;
        if (YokeThickness is { } wall)
        {
            joint = YokeYield is { } yield ? joint.WithYoke(wall, yield) : joint;
            joint = YokeTensile is { } tensile ? joint.WithYokeTensile(wall, tensile) : joint;
        }

        joint = YokeEdge is { } edge ? joint.WithYokeEdge(edge) : joint;
        joint = Stated.BoltLength is { } length && HubDiameter is { } hub ? joint.WithBoltLength(length, hub) : joint;
        joint = HoleDiameter is { } hole ? joint.WithHole(hole) : joint;
        joint = ShaftYield is { } shaftYield ? joint.WithShaftYield(shaftYield) : joint;
        return joint.Closed();
    }

    private ShearBoltJoint Dated(ShearBoltJoint joint)
    {
        if (HubSeen is { } seen)
        {
            joint = day is { } today ? joint.WithHubSeen(seen, today) : joint.WithHubSeen(seen);
        }

        return LastTrip is not { } trip ? joint
            : day is { } on ? joint.WithLastTrip(trip, on)
            : joint.WithLastTrip(trip);
    }
}
