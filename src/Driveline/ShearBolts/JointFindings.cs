using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>What a joint and its bolt report beside the break torque.</summary>
internal static class JointFindings
{
    public static IReadOnlyList<Finding> Of(ShearBoltJoint joint, ShearPlane plane, TorqueBand freeTorque)
    {
        var findings = new List<Finding>();
        AddHub(findings, joint);
        AddBolt(findings, joint.Bolt, plane);
        HoleFindings.Add(findings, joint, freeTorque);
        return findings.AsReadOnly();
    }

    private static void AddHub(List<Finding> findings, ShearBoltJoint joint)
    {
        switch (joint.Hub)
        {
            case HubState.Seized:
                findings.Add(
                    Finding.Of(ShearBoltFindings.HubSeized, Severity.Danger).WithBecause(BoltFact.Hub).Barring(Bars.Guards)
                        .WithSettledBy(Measurements.FreeHub));
                break;
            case HubState.NotKnown when joint.HubFriction is null:
                findings.Add(
                    Finding.NotKnown(ShearBoltFindings.HubFreedomNotKnown).WithBecause(BoltFact.Hub).Barring(Bars.Guards)
                        .WithSettledBy(Measurements.HubTurn));
                break;
            case var _ when joint.IsHubSeenTooLongAgo:
                findings.Add(Finding.Of(ShearBoltFindings.HubFreedomTooOld, Severity.Warning)
                    .WithBecause(BoltFact.HubSeen, BoltFact.LastTrip).Barring(Bars.Guards)
                    .WithSettledBy(Measurements.HubTurn)
                    .With("seen", joint.HubSeen!.Value.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
                break;
            case HubState.Stiff when joint.HubFriction is null:
                findings.Add(
                    Finding.Of(ShearBoltFindings.HubStiff, Severity.Warning).WithBecause(BoltFact.Hub).Barring(Bars.Guards)
                        .WithSettledBy(Measurements.HubTurn));
                break;
        }

        double friction = (joint.HubFriction?.SiBand.High ?? 0) + (joint.FlangeFriction?.SiBand.High ?? 0);
        if (friction > 0)
        {
            findings.Add(Finding.Of(ShearBoltFindings.FrictionRaisesHigh, Severity.Note).WithBecause(BoltFact.HubFriction)
                .With("friction", QuantityKind.Torque, friction));
        }
    }

    private static void AddBolt(List<Finding> findings, ShearBolt bolt, ShearPlane plane)
    {
        if (bolt.FittedSpringPin is not null)
        {
            findings.Add(Finding.Of(ShearBoltFindings.SpringPinNoMaximum, Severity.Warning).WithBecause(BoltFact.SpringPin)
                .Barring(Bars.Guards)
                .WithSettledBy(Measurements.IdentifyDevice)
                .With("pin", bolt.FittedSpringPin.ToString())
                .With("minimum", QuantityKind.Force, bolt.FittedSpringPin.MinimumDoubleShearN));
            return;
        }

        if (bolt.PlaneThrough == PlaneThrough.NotKnown)
        {
            findings.Add(Finding.NotKnown(ShearBoltFindings.PlaneNotKnown).WithBecause(BoltFact.PlaneThrough)
                .WithSettledBy(Measurements.PlaneThrough)
                .With("low", QuantityKind.Force, plane.Load.SiBand.Low)
                .With("high", QuantityKind.Force, plane.Load.SiBand.High));
        }
        else if (bolt.PlaneThrough == PlaneThrough.Thread)
        {
            findings.Add(Finding.Of(ShearBoltFindings.ThreadsInPlane, Severity.Note).WithBecause(BoltFact.PlaneThrough)
                .With("share", QuantityKind.Number, Math.Min(1, ThreadedArea.MeanM2(bolt.Thread!) / bolt.Thread!.ShankAreaM2)));
            if (!ThreadedArea.IsTested(bolt.Thread))
            {
                findings.Add(Finding.Of(ShearBoltFindings.ThreadShareExtrapolated, Severity.Note)
                    .WithBecause(BoltFact.PlaneThrough, BoltFact.Thread)
                    .With("smallest", QuantityKind.Length, ThreadedArea.SmallestTestedM));
            }
        }

        if (bolt.NeedsNeck && bolt.NeckDiameter is null)
        {
            findings.Add(plane.Load.IsBounded
                ? Finding.NotKnown(ShearBoltFindings.NeckNotKnown).WithBecause(BoltFact.NeckDiameter)
                    .WithSettledBy(Measurements.NeckDiameter)
                    .With("high", QuantityKind.Force, plane.Load.SiBand.High)
                : Finding.NotKnown(ShearBoltFindings.NeckAndStrengthNotKnown).WithBecause(BoltFact.NeckDiameter)
                    .WithSettledBy(Measurements.NeckDiameter));
        }

        AddMaterial(findings, bolt);
    }

    private static void AddMaterial(List<Finding> findings, ShearBolt bolt)
    {
        FastenerMaterial material = bolt.Material;
        if (material.MarkConflict is { } conflict)
        {
            findings.Add(
                Finding.Of(ShearBoltFindings.MarksContradict, Severity.Danger)
                    .WithBecause(BoltFact.Grade, BoltFact.Hardness, BoltFact.HeadMarks).Barring(Bars.Both)
                    .WithSettledBy(Measurements.IdentifyDevice)
                .With("stated", conflict.Stated)
                .With("mark", conflict.Mark.ToString())
                .With("grades", conflict.Meaning));
        }
        else if (bolt.IsSpecial && material.Tensile is null)
        {
            findings.Add(Finding.NotKnown(ShearBoltFindings.SpecialStrengthNotKnown).WithBecause(BoltFact.Hardness)
                .WithSettledBy(Measurements.BoltHardness));
        }
        else if (!material.IsIdentified)
        {
            findings.Add(Finding.Of(ShearBoltFindings.BoltNotIdentified, Severity.Danger)
                .WithBecause(BoltFact.Grade, BoltFact.Hardness, BoltFact.HeadMarks)
                .Barring(Bars.Both).WithSettledBy(Measurements.IdentifyDevice).With("bolt", bolt.ToString()));
        }
        else if (material.Tensile is { IsBounded: false })
        {
            findings.Add(Finding.Of(ShearBoltFindings.NoAssuredMaximum, Severity.Warning)
                .WithBecause(BoltFact.Grade, BoltFact.Hardness, BoltFact.HeadMarks)
                .Barring(Bars.Guards).WithSettledBy(Measurements.BoltHardness).With("bolt", bolt.ToString()));
        }

        if (material.Family is MaterialFamily.MildSteel or MaterialFamily.ColdWorkedMildSteel)
        {
            findings.Add(Finding.Of(ShearBoltFindings.FastLoading, Severity.Note).WithBecause(BoltFact.Grade));
        }
    }
}
