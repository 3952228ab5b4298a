
namespace Driveline.Protection;

/// <summary>All torques of a verdict in order, lowest first, referred to the PTO.</summary>
internal static class TorqueLadder
{
    public static IReadOnlyList<LadderRung> Of(ProtectionVerdict verdict)
    {
        var rungs = new List<LadderRung>();
        if (verdict.WorkPeak is { } work)
        {
            rungs.Add(new LadderRung(LadderRungKind.Work, null, work));
        }

        if (verdict.Question.Engagement.Highest is { } engagement)
        {
            rungs.Add(new LadderRung(LadderRungKind.Engagement, null, engagement));
        }

        foreach (DeviceCheck device in verdict.Devices)
        {
            if (device.TripAtPto is { } trip)
            {
                rungs.Add(new LadderRung(LadderRungKind.Trip, device.Device.Name, trip));
            }
        }

        foreach (PartCheck part in verdict.Parts)
        {
            if (part.DamagedAtPto is { } damaged)
            {
                rungs.Add(new LadderRung(LadderRungKind.Damage, part.Part.Name, damaged));
            }
        }

        return [.. rungs.OrderBy(r => r.Torque.HasExpected ? r.Torque.SiBand.Expected : r.Torque.SiBand.Low).ThenBy(r => r.Kind)];
    }
}
