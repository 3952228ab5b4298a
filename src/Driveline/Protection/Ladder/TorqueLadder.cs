
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

        // Few rungs, put in order one by one: a query ordered by numbers is compiled anew in every process that starts.
        for (int k = 1; k < rungs.Count; k++)
        {
            LadderRung rung = rungs[k];
            int at = k;
            for (; at > 0 && IsBelow(rung, rungs[at - 1]); at--)
            {
                rungs[at] = rungs[at - 1];
            }

            rungs[at] = rung;
        }

        return [.. rungs];
    }

    private static bool IsBelow(LadderRung rung, LadderRung other)
    {
        int torque = HeightOf(rung).CompareTo(HeightOf(other));
        return torque < 0 || (torque == 0 && rung.Kind < other.Kind);
    }

    private static double HeightOf(LadderRung rung) =>
        rung.Torque.HasExpected ? rung.Torque.SiBand.Expected : rung.Torque.SiBand.Low;
}
