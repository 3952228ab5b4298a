using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>What the holes of a joint report: how the bolt sits in them, and what they do to the yoke and the shaft.</summary>
internal static class HoleFindings
{
    private static readonly string[] ShaftAndHole = [BoltFact.ShaftDiameter, BoltFact.HoleDiameter];

    public static void Add(List<Finding> findings, ShearBoltJoint joint, TorqueBand freeTorque)
    {
        AddFit(findings, joint, freeTorque);
        AddYokeAndShaft(findings, joint, freeTorque);
    }

    private static void AddFit(List<Finding> findings, ShearBoltJoint joint, TorqueBand freeTorque)
    {
        if (joint.Bolts > 1 && !joint.IsTight)
        {
            bool worn = joint.HoleFit == HoleFit.Worn;
            findings.Add(Finding.Of(worn ? ShearBoltFindings.HolesWorn : ShearBoltFindings.HoleFitNotKnown, Severity.Warning)
                .WithBecause(BoltFact.HoleFit)
                .BarringNothing()   // the low end of the torque already counts the bolts as parting one by one
                .With("bolts", QuantityKind.Count, joint.Bolts)
                .With("low", QuantityKind.Torque, freeTorque.SiBand.Low));
        }

        if (joint.IsLooseInHole)
        {
            findings.Add(Finding.Of(ShearBoltFindings.LooseInHole, Severity.Warning).WithBecause(BoltFact.HoleDiameter)
                .Barring(Bars.Quiet).WithSettledBy(Measurements.HoleFit)
                .With("bolt", QuantityKind.Length, joint.Bolt.DiameterM)
                .With("hole", QuantityKind.Length, joint.SeatM)
                .With("widest", QuantityKind.Length, joint.WidestFitM));
        }

        if (joint.Bolts == 1 && joint.HoleFit == HoleFit.Worn)
        {
            findings.Add(
                Finding.Of(ShearBoltFindings.HoleWornAroundBolt, Severity.Warning).WithBecause(BoltFact.HoleFit)
                    .Barring(Bars.Quiet).WithSettledBy(Measurements.HoleFit));
        }

        if (joint.StandOffM > 0 || joint.HoleFit == HoleFit.Worn || joint.IsLooseInHole)
        {
            findings.Add(Finding.Of(ShearBoltFindings.FacesMayMove, Severity.Warning)
                .WithBecause(BoltFact.StandOff, BoltFact.HoleFit, BoltFact.HoleDiameter));
        }

        if (joint.ProtrusionM is { } proudM && proudM > joint.Bolt.DiameterM / 2)
        {
            findings.Add(Finding.Of(ShearBoltFindings.BoltStandsProud, Severity.Warning)
                .WithBecause(BoltFact.BoltLength, BoltFact.HubDiameter).With("protrusion", QuantityKind.Length, proudM));
        }

        if (joint.StandOffM > 0)
        {
            findings.Add(Finding.Of(ShearBoltFindings.StandOffBendsBolt, Severity.Warning).WithBecause(BoltFact.StandOff)
                .With("gap", QuantityKind.Length, joint.StandOffM)
                .With("low", QuantityKind.Torque, freeTorque.SiBand.Low));
        }
    }

    private static void AddYokeAndShaft(List<Finding> findings, ShearBoltJoint joint, TorqueBand freeTorque)
    {
        if (HoleBearing.TryOf(joint, out HoleBearing? bearing))
        {
            double oval = bearing!.FirstOvalNm;
            if (oval < freeTorque.SiBand.High)
            {
                findings.Add(Finding.Of(ShearBoltFindings.HolesOvalFirst, Severity.Warning)
                    .WithBecause(BoltFact.YokeThickness, BoltFact.YokeYieldStrength)
                    .With("oval", QuantityKind.Torque, oval)
                    .With("high", QuantityKind.Torque, freeTorque.SiBand.High));
            }
        }

        if (joint.Layout != JointLayout.ThroughShaft)
        {
            return;
        }

        double ratio = joint.HoleM / (2 * joint.RadiusM);
        findings.Add(ratio <= 0.5 * (1 + 1e-9)
            ? Finding.Whole(ShearBoltFindings.CrossHoleWeakensShaft, Severity.Note, Bars.Nothing, null, ShaftAndHole,
                FindingParameter.Of("hole", QuantityKind.Length, joint.HoleM),
                FindingParameter.Of("shaft", QuantityKind.Length, 2 * joint.RadiusM),
                FindingParameter.Of("share", QuantityKind.Probability, CrossHole.ElasticShareOf(ratio)))
            : Finding.Of(ShearBoltFindings.CrossHoleTooLarge, Severity.Danger).WithBecause(BoltFact.ShaftDiameter, BoltFact.HoleDiameter)
                .With("hole", QuantityKind.Length, joint.HoleM)
                .With("shaft", QuantityKind.Length, 2 * joint.RadiusM));
    }
}
