namespace Driveline.Torsion;

/// <summary>What a crossing or a moment on the clock does to the links.</summary>
internal static partial class Transitions
{
    /// <summary>States at the start of a run; twists and speeds are set already.</summary>
    public static void Begin(Mechanism m, RunState x)
    {
        for (int l = 0; l < m.Links; l++)
        {
            x.Slip[l] = 0;
            x.Face[l] = 0;
            x.Broken[l] = false;
            x.Relaxing[l] = false;
            x.SwungBack[l] = false;
            x.Side[l] = x.Twist[l] < 0 ? -1 : 1;
            x.Links[l] = m.Start[l] >= 0 ? LinkState.Absent : m.RampTime[l] >= 0 ? LinkState.Free : TakeHold(m, x, l);
        }

        x.DriveLimit = 0;
        x.Time = 0;
    }

    public static void Apply(Mechanism m, RunState x, Plan plan, RunLog log, EnergyMeter energy, Crossing crossing, int l)
    {
        switch (crossing)
        {
            case Crossing.SlipForward:
                StartSlip(m, x, plan, log, energy, l, 1);
                break;
            case Crossing.SlipBackward:
                StartSlip(m, x, plan, log, energy, l, -1);
                break;
            case Crossing.SlipEnd:
                x.Links[l] = LinkState.Locked;
                x.Relaxing[l] = false;
                log.Add(Ended(m, l), l, x.Time);
                break;
            case Crossing.SwingEnd:
                x.SwungBack[l] = true;
                x.Links[l] = LinkState.Locked;
                x.Relaxing[l] = false;
                log.Add(TransientEventKind.SwungBack, l, x.Time);
                Strike(m, x, plan, log, energy, l);
                break;
            case Crossing.CutThrough:
                x.Broken[l] = true;
                x.Links[l] = LinkState.Free;
                log.Add(TransientEventKind.CutThrough, l, x.Time);
                plan.AtTime(m, x);
                Unload(m, x, plan, energy, l);
                break;
            case Crossing.FacesMeet:
            case Crossing.ReverseFacesMeet:
                x.Side[l] = crossing == Crossing.FacesMeet ? 1 : -1;
                x.Links[l] = LinkState.Locked;
                x.Relaxing[l] = false;
                log.Add(TransientEventKind.FacesMet, l, x.Time);
                Strike(m, x, plan, log, energy, l);
                break;
            case Crossing.DriveMost:
            case Crossing.DriveLeast:
                x.DriveLimit = crossing == Crossing.DriveMost ? 1 : -1;
                log.Add(TransientEventKind.DriveLimited, -1, x.Time);
                break;
            case Crossing.DriveOnLine:
                x.DriveLimit = 0;
                log.Add(TransientEventKind.DriveOnLine, -1, x.Time);
                break;
            default:
                break;
        }
    }

    /// <summary>Friction loads on a body that another one has just brought to rest hold it too.</summary>
    public static bool Follow(Mechanism m, RunState x, Plan plan)
    {
        bool changed = false;
        for (int l = 0; l < m.Links; l++)
        {
            if (m.To[l] == Mechanism.Ground
                && !m.IsElastic(l)
                && x.Links[l] is LinkState.SlipForward or LinkState.SlipBackward
                && plan.Bodies.IsAtRest(m.From[l]))
            {
                x.Links[l] = LinkState.Locked;
                changed = true;
            }
        }

        return changed;
    }

    /// <summary>Damped springs of slipping links that have come to rest leave the step limit.</summary>
    public static bool Settle(Mechanism m, RunState x, Plan plan, RunLog log)
    {
        bool changed = false;
        for (int l = 0; l < m.Links; l++)
        {
            if (x.Relaxing[l])
            {
                double target = RestTwist(m, plan, l);
                double size = Math.Max(Math.Abs(target), log.Scale[l] / m.Stiffness[l]);
                if (Math.Abs(x.Twist[l] - target) <= 1e-15 * size)
                {
                    x.Twist[l] = target;
                    x.Relaxing[l] = false;
                    changed = true;
                }
            }
        }

        return changed;
    }

    // A spring in series lets the massless side take any speed, so an elastic coupling takes hold at once.
    private static LinkState TakeHold(Mechanism m, RunState x, int l)
    {
        if (m.IsElastic(l))
        {
            return LinkState.Locked;
        }

        double speed = x.Speed[m.From[l]] - (m.To[l] < 0 ? 0 : x.Speed[m.To[l]]);
        return speed > 0 ? LinkState.SlipForward : speed < 0 ? LinkState.SlipBackward : LinkState.Locked;
    }

    private static double RestTwist(Mechanism m, Plan plan, int l) =>
        (plan.Carried[l] - (m.Damping[l] * plan.CarriedRate[l] / m.Stiffness[l])) / m.Stiffness[l];

    private static void StartSlip(Mechanism m, RunState x, Plan plan, RunLog log, EnergyMeter energy, int l, int sign)
    {
        bool opens = m.HasGap[l] && sign != x.Side[l];
        if (opens)
        {
            x.Links[l] = LinkState.Open;
            x.Face[l] = x.Side[l] > 0 ? x.Slip[l] : x.Slip[l] + m.Backlash[l];
            log.Add(TransientEventKind.FacesParted, l, x.Time);
        }
        else
        {
            bool breaks = m.BreaksOnce[l] && !x.Broken[l];
            x.Broken[l] |= breaks;
            x.Links[l] = x.Broken[l] && m.Residual[l] == 0 ? LinkState.Free
                : sign > 0 ? LinkState.SlipForward : LinkState.SlipBackward;
            log.Slipped(l, x.Time);
            log.Add(breaks ? TransientEventKind.Broke : Started(m, l), l, x.Time);
        }

        plan.AtTime(m, x);
        if (m.IsElastic(l))
        {
            Unload(m, x, plan, energy, l);
        }
    }

    // The spring of a link that lets go falls back to what the link still carries: at once without damping.
    private static void Unload(Mechanism m, RunState x, Plan plan, EnergyMeter energy, int l)
    {
        if (m.Damping[l] > 0)
        {
            x.Relaxing[l] = true;
            return;
        }

        double rest = RestTwist(m, plan, l);
        double twist = x.Twist[l];
        energy.Slip[l] += 0.5 * m.Stiffness[l] * ((twist * twist) - (rest * rest));
        x.Slip[l] += twist - rest;
        x.Twist[l] = rest;
        if (x.Links[l] == LinkState.Open)
        {
            x.Face[l] += twist - rest;
        }
    }

    // A rigid obstacle stops its rotor at once; what hangs on it by a coupling of finite capacity runs on and slips.
    private static void Strike(Mechanism m, RunState x, Plan plan, RunLog log, EnergyMeter energy, int l)
    {
        if (m.IsElastic(l) || m.To[l] != Mechanism.Ground || !double.IsPositiveInfinity(m.Breakaway[l])
            || (m.SwingAngle[l] > 0 && !x.SwungBack[l]))
        {
            return;
        }

        int i = m.From[l];
        double speed = x.Speed[i];
        if (speed == 0)
        {
            return;
        }

        log.Struck[l] = true;
        energy.Impact[l] += 0.5 * m.Inertia[i] * speed * speed;
        x.Speed[i] = 0;
        for (int other = 0; other < m.Links; other++)
        {
            if (other == l || m.IsElastic(other) || (m.From[other] != i && m.To[other] != i))
            {
                continue;
            }

            if (m.To[other] == Mechanism.Ground)
            {
                x.Links[other] = x.Links[other] is LinkState.Absent or LinkState.Free ? x.Links[other] : LinkState.Locked;
            }
            else if (x.Links[other] == LinkState.Locked)
            {
                double slip = x.Speed[m.From[other]] - x.Speed[m.To[other]];
                StartSlip(m, x, plan, log, energy, other, slip > 0 ? 1 : -1);
            }
        }
    }

    private static TransientEventKind Started(Mechanism m, int l) =>
        m.Start[l] >= 0 ? TransientEventKind.Yielding
        : m.ReverseBreakaway[l] == 0 && double.IsPositiveInfinity(m.Breakaway[l]) ? TransientEventKind.OverrunStarted
        : TransientEventKind.SlipStarted;

    private static TransientEventKind Ended(Mechanism m, int l) =>
        m.Start[l] >= 0 ? TransientEventKind.YieldingEnded
        : m.ReverseBreakaway[l] == 0 && double.IsPositiveInfinity(m.Breakaway[l]) ? TransientEventKind.OverrunEnded
        : TransientEventKind.SlipEnded;
}
