namespace Driveline.Torsion;

/// <content>What the clock brings: obstacles that come, couplings that begin to take hold.</content>
internal static partial class Transitions
{
    /// <summary>Obstacles whose time has come and couplings that begin to take hold.</summary>
    /// <returns>True when something changed.</returns>
    public static bool OnTime(Mechanism m, RunState x, Plan plan, RunLog log, EnergyMeter energy)
    {
        bool changed = false;
        for (int l = 0; l < m.Links; l++)
        {
            if (x.Links[l] == LinkState.Absent && m.Start[l] <= x.Time)
            {
                changed = true;
                log.Add(TransientEventKind.FacesMet, l, x.Time);
                x.Links[l] = Arrival(m, x, l);
                if (x.Links[l] == LinkState.Locked)
                {
                    Strike(m, x, plan, log, energy, l);
                }
            }

            if (x.Links[l] == LinkState.Free && !x.Broken[l] && m.RampTime[l] >= 0 && m.RampStart[l] <= x.Time)
            {
                changed = true;
                x.Links[l] = TakeHold(m, x, l);
                log.Add(TransientEventKind.Engaging, l, x.Time);
            }
        }

        return changed;
    }

    /// <summary>The next moment on the clock after now, at most the end of the run.</summary>
    public static double NextTime(Mechanism m, RunState x, double end)
    {
        double next = end;
        for (int l = 0; l < m.Links; l++)
        {
            next = Earlier(next, m.Start[l], x.Time);
            if (m.RampTime[l] >= 0)
            {
                next = Earlier(next, m.RampStart[l], x.Time);
                next = Earlier(next, m.RampStart[l] + m.RampTime[l], x.Time);
            }
        }

        for (int k = 0; k < m.Torque.Length; k++)
        {
            next = Earlier(next, m.TorqueStart[k], x.Time);
            next = Earlier(next, m.TorqueStart[k] + m.TorqueRamp[k], x.Time);
        }

        return next;
    }

    private static double Earlier(double next, double candidate, double now) => candidate > now && candidate < next ? candidate : next;

    private static LinkState Arrival(Mechanism m, RunState x, int l)
    {
        if (m.IsElastic(l))
        {
            return LinkState.Locked;
        }

        return m.HasGap[l] && x.Speed[m.From[l]] < 0 ? LinkState.Open
            : m.SwingAngle[l] > 0 ? TakeHold(m, x, l)
            : LinkState.Locked;
    }
}
