using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Chains;

/// <summary>A shear-bolt joint in its place in the driveline.</summary>
/// <remarks>
/// What is not known about the bolt bars a Yes: the shear plane, the grade, head marks of another grade, the hub, the neck of a special; for bolts beside
/// the shaft the number of planes and the gap between the faces; for a bolt through its shaft the steel around the cross-hole.
/// </remarks>
public sealed class ShearBoltDevice : ProtectiveDevice
{
    private static readonly string[] GuardBarCodes =
    [
        ShearBoltFindings.PlaneNotKnown,
        ShearBoltFindings.HubSeized,
        ShearBoltFindings.HubStiff,
        ShearBoltFindings.HubFreedomNotKnown,
        ShearBoltFindings.BoltNotIdentified,
        ShearBoltFindings.MarksContradict,
        ShearBoltFindings.NoAssuredMaximum,
        ShearBoltFindings.NeckNotKnown,
        ShearBoltFindings.SpecialStrengthNotKnown,
        ShearBoltFindings.SpringPinNoMaximum,
        DeviceFindings.ShearPlanesNotKnown,
        DeviceFindings.ShaftAtCrossHoleNotKnown,
    ];

    private static readonly string[] QuietBarCodes =
    [
        ShearBoltFindings.PlaneNotKnown,
        ShearBoltFindings.BoltNotIdentified,
        ShearBoltFindings.MarksContradict,
        ShearBoltFindings.NeckNotKnown,
        ShearBoltFindings.SpecialStrengthNotKnown,
        DeviceFindings.ShearPlanesNotKnown,
        DeviceFindings.StandOffNotKnown,
        ShearBoltFindings.LooseInHole,
    ];

    private ShearBoltDevice(string name, BreakTorque breakTorque)
        : base(name)
    {
        BreakTorque = breakTorque;
        Findings = AllFindings(name, breakTorque);
        GuardBars = [.. Findings.Where(f => GuardBarCodes.Contains(f.Code))];
        QuietBars = [.. Findings.Where(f => QuietBarCodes.Contains(f.Code))];
        ImpliedParts = AtCrossHole(breakTorque.Joint);
    }

    /// <summary>The break torque of the joint, with its own findings and calculation sheet.</summary>
    public BreakTorque BreakTorque { get; }

    /// <inheritdoc/>
    public override DeviceKind Kind => DeviceKind.ShearBolt;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway => !BreakTorque.IsKnown ? null
        : NeverLetsGo ? TorqueBand.OfSi(new Band(BreakTorque.Torque.SiBand.Low, double.PositiveInfinity, double.PositiveInfinity), BreakTorque.Torque.Basis)
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
    public override IReadOnlyList<Finding> Findings { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> GuardBars { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> QuietBars { get; }

    /// <inheritdoc/>
    public override TorqueBand? InGoodOrder => BreakTorque.IsKnown ? BreakTorque.IfHubFree : null;

    /// <inheritdoc/>
    public override bool IsIdentified => BreakTorque.IsKnown
        && (BreakTorque.Joint.Bolt.Material.IsIdentified || BreakTorque.Joint.Bolt.FittedSpringPin is not null);

    /// <inheritdoc/>
    public override IReadOnlyList<Part> ImpliedParts { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<CalculationLine> Sheet() => BreakTorque.IsKnown ? BreakTorque.Sheet() : [];

    /// <summary>A joint in its place, under a name by which people know it.</summary>
    public static ShearBoltDevice Of(string name, ShearBoltJoint joint) => new(name, BreakTorque.Of(joint));

    private static List<Finding> AllFindings(string name, BreakTorque breakTorque)
    {
        ShearBoltJoint joint = breakTorque.Joint;
        var findings = new List<Finding>(breakTorque.Findings.Count + 2);
        findings.AddRange(breakTorque.Findings);
        if (!joint.ArePlanesStated)
        {
            findings.Add(Finding.Of(DeviceFindings.ShearPlanesNotKnown, Severity.Warning).With("name", name));
        }

        if (joint.Layout != JointLayout.ThroughShaft && !joint.IsStandOffStated)
        {
            findings.Add(Finding.Of(DeviceFindings.StandOffNotKnown, Severity.Warning).With("name", name));
        }

        if (joint.Layout == JointLayout.ThroughShaft && joint.ShaftYield is null)
        {
            findings.Add(Finding.Of(DeviceFindings.ShaftAtCrossHoleNotKnown, Severity.Warning).With("name", name));
        }

        return findings;
    }

    private static IReadOnlyList<Part> AtCrossHole(ShearBoltJoint joint)
    {
        if (joint.Layout != JointLayout.ThroughShaft || joint.ShaftYield is null)
        {
            return [];
        }

        Part shaft = Part.Of(PartKind.ShaftAtCrossHole, "shaft at the bolt hole");
        return [CrossHole.TryOf(joint, out CrossHole? hole) ? shaft.WithLimit(PartLimit.Section(hole!.PermanentTwist)) : shaft];
    }
}
