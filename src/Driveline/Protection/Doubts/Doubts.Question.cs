using Driveline.Chains;
using Driveline.Findings;

namespace Driveline.Protection;

/// <content>What the list of parts, the work and the engagement leave open.</content>
internal static partial class Doubts
{
    private static void OfList(ProtectionVerdict verdict, List<Doubt> found)
    {
        ProtectionQuestion question = verdict.Question;
        if (verdict.Devices.Count == 0)
        {
            Finding finding = Finding.Of(ProtectionFindings.NoDevice, Severity.Danger).WithBecause(Because.Driveline);
            found.Add(Both(finding, Measurements.IdentifyDevice, null, double.PositiveInfinity));
        }

        for (int k = 0; k < question.Chain.Nodes.Length; k++)
        {
            if (question.Chain.Nodes[k].Element is not Part { Ratio: null } gearbox)
            {
                continue;
            }

            Finding finding = Named(ProtectionFindings.GearboxRatioNotKnown, Severity.Warning, gearbox.Name)
                .WithBecause(Because.At(gearbox, "ratio"));
            found.Add(Both(finding, Measurements.GearboxData, gearbox.Name, 0));
        }

        if (!question.PartsComplete)
        {
            Finding finding = Finding.Of(ProtectionFindings.PartsNotComplete, Severity.Warning);
            found.Add(Both(finding, Measurements.PartsList));
        }

        if (question.Machine == Loads.MachineKind.NotKnown)
        {
            Finding finding = Finding.Of(ProtectionFindings.MachineNotKnown, Severity.Warning);
            found.Add(Both(finding, Measurements.PartsList));
        }

        foreach (PartKind kind in verdict.MissingParts)
        {
            Finding finding = Finding.Of(ProtectionFindings.ExpectedPartMissing, Severity.Warning).With("kind", PartKindWords.CodeOf(kind));
            found.Add(Both(finding, Measurements.PartsList));
        }
    }

    private static void OfWork(ProtectionVerdict verdict, List<Doubt> found)
    {
        ProtectionQuestion question = verdict.Question;
        if (question.TripsInNormalWork == true)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.TripsSeenInWork, Severity.Warning), Measurements.WorkPeak, null));
        }

        if (question.Work is not { } work)
        {
            found.Add(Quiet(
                Finding.Of(ProtectionFindings.WorkNotKnown, Severity.Warning), Measurements.WorkPeak, null, leavesUnknown: true));
        }
        else if (work.IsAssumed)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.WorkAssumed, Severity.Warning), Measurements.WorkPeak, null));
        }
        else if (!work.Torque.IsBounded)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.WorkUnbounded, Severity.Warning), Measurements.WorkPeak, null,
                leavesUnknown: !work.Torque.HasExpected));
        }

        if (!question.Engagement.IsKnown)
        {
            found.Add(Quiet(Finding.Of(ProtectionFindings.EngagementNotKnown, Severity.Warning), Measurements.PtoClutchCapacity, null));
        }
        else if (verdict.TrippedByEngagement is { } tripped)
        {
            Finding finding = Named(ProtectionFindings.EngagementTrips, Severity.Warning, tripped.Device.Name)
                .With("peak", QuantityKind.Torque, question.Chain.Nodes[tripped.Index].FromPto(question.Engagement.Peak!.SiBand).Expected)
                .With("trip", QuantityKind.Torque, tripped.Device.Running!.SiBand.Expected)
                .WithBecause(Because.At(tripped.Device));
            found.Add(new Doubt(finding.Barring(Bars.Quiet), tripped.Device.Name));
        }
        else if (verdict.EngagementMayTrip)
        {
            Finding finding = Finding.Of(ProtectionFindings.EngagementMayTrip, Severity.Warning)
                .With("engagementHigh", QuantityKind.Torque, question.Engagement.Highest!.SiBand.High);
            found.Add(new Doubt(finding.Barring(Bars.Quiet), null));   // what it rests on is stated: habit cures it, not a measurement
        }
    }
}
