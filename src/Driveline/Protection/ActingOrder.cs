using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Which of several devices acts first, and which of them slips while the PTO is engaged.</summary>
internal static class ActingOrder
{
    public static void Add(ProtectionVerdict verdict, List<Finding> findings)
    {
        AddEngagement(verdict, findings);
        if (verdict.Devices.Count > 1)
        {
            AddFirst(verdict, findings);
        }
    }

    private static void AddEngagement(ProtectionVerdict verdict, List<Finding> findings)
    {
        if (verdict.Question.Engagement is { IsFeathered: true, Peak: null } or not { Highest: not null })
        {
            return;
        }

        Band highest = verdict.Question.Engagement.Highest!.SiBand;
        foreach (DeviceCheck check in verdict.Devices)
        {
            Band atDevice = verdict.Question.Chain.Nodes[check.Index].FromPto(highest);
            if (check.Device is { StandsEngagement: true, IsStuck: false, Running: { } running } && running.SiBand.Low <= atDevice.High)
            {
                findings.Add(Finding.Of(ProtectionFindings.EngagementSlipsClutch, Severity.Note).With("name", check.Device.Name));
            }
        }
    }

    private static void AddFirst(ProtectionVerdict verdict, List<Finding> findings)
    {
        DeviceCheck? first = null;
        foreach (DeviceCheck check in verdict.AllDevices)
        {
            bool isKnown = check.TripAtPto is { HasExpected: true };
            first = isKnown && !(check.TripAtPto!.SiBand.Expected >= first?.TripAtPto!.SiBand.Expected) ? check : first;
        }

        if (first is null)
        {
            findings.Add(Finding.Of(ProtectionFindings.FirstNotKnown, Severity.Warning));
            return;
        }

        Band trip = first.TripAtPto!.SiBand;
        foreach (DeviceCheck other in verdict.AllDevices)
        {
            if (ReferenceEquals(other, first))
            {
                continue;
            }

            bool isLater = other.TripAtPto is { } later && trip.High <= later.SiBand.Low;
            Finding finding = Finding.Of(isLater ? ProtectionFindings.ActsFirst : ProtectionFindings.MayActFirst, Severity.Note)
                .With("name", first.Device.Name)
                .With("expected", QuantityKind.Torque, trip.Expected)
                .With("other", other.Device.Name);
            findings.Add(finding);
        }
    }
}
