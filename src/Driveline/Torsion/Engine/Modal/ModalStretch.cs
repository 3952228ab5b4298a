namespace Driveline.Torsion;

/// <summary>Follows the motion by its modes from an event to the next, in steps as long as bounds allow.</summary>
/// <remarks>
/// A step is taken whole when a bound shows that within it nothing watched crosses its bound; otherwise it is halved, until
/// what may cross is a polynomial whose first root decides. Peaks are searched for when the end is known, and only where a bound
/// allows one higher than all values at the ends of steps. The state at the end, turned angles, slips and energies follow from the
/// start of the stretch in closed form.
/// </remarks>
internal sealed class ModalStretch
{
    private readonly ModalCache cache;
    private readonly ModalMotion motion;
    private readonly ModalTracks tracks;
    private readonly ModalInterval interval = new();
    private readonly ModalIntegrals integrals = new();
    private readonly ModalPast past;
    private readonly double[] input;
    private double[] left;
    private double[] right;
    private double[] turned;
    private ModalStep? whole;
    private double at;
    private double lastFrom;

    public ModalStretch(int rotors, int links)
    {
        int most = 2 * (rotors + links);
        cache = new ModalCache(rotors, links);
        motion = new ModalMotion(rotors, links);
        tracks = new ModalTracks(links);
        past = new ModalPast(most, ModalTracks.Most(links));
        input = new double[most];
        left = new double[most];
        right = new double[most];
        turned = new double[most];
        interval.Fit(most);
    }

    /// <summary>True when the stretch ended with a crossing, which <see cref="EventSearch"/> names.</summary>
    public bool Crossed { get; private set; }

    /// <summary>True when it ended at the moment on the clock.</summary>
    public bool Hits { get; private set; }

    /// <summary>Follows the motion up to a moment on the clock or an event; false when it has no sound modes.</summary>
    public bool TryRun(Mechanism m, TransientWorkspace w, TransientLimits limits, double next, ref TransientTrace trace)
    {
        ModalSystem system = cache.Of(m, w.State, w.Plan, w.Series);
        if (!system.IsSound)
        {
            return false;
        }

        RunState x = w.State;
        RunLog log = w.Log;
        log.Work += system.Work;
        if (w.Plan.HasRamps)
        {
            w.Plan.AtTime(m, x);
        }

        motion.Begin(system, m, x, w.Plan, w.Series);
        tracks.Begin(m, x, w.Plan, log);
        double start = x.Time;
        double end = next - start;
        Crossed = false;
        at = 0;
        past.Clear();
        motion.Start.AsSpan(0, system.Width).CopyTo(left);
        tracks.Measure(motion);
        March(m, system, w, limits, end);
        Hits = !Crossed && at >= end;
        if (at > 0)
        {
            whole = Exactly(system, at);
            trace.Add(m, motion, whole, start, at, Hits && trace.EndsAt(next), log);
            ModalEnergies.Add(m, x, w.Plan, integrals, motion, whole, w.Energy);
            log.Work += (long)system.Modes * system.Modes * (m.Rotors + m.Links);
            whole.Advance(motion.Start.AsSpan(0, system.Width), motion.Input, motion.InputRate, right);
            motion.Finish(m, w.Plan, x, right);
            Settle(start, log);
            ModalTracks.ReachSlipping(m, x, w.Plan, log, start + at, at);
        }

        x.Time = Hits ? next : start + at;
        return true;
    }

    private void March(Mechanism m, ModalSystem system, TransientWorkspace w, TransientLimits limits, double end)
    {
        RunLog log = w.Log;
        int level = system.Fastest > 0 ? system.FirstLevel : 0;
        int growth = 2;
        while (at < end && !(log.Steps > limits.Steps || log.Work > limits.Work || log.WorkExhausted))
        {
            limits.Stop.ThrowIfCancellationRequested();
            double rest = end - at;
            bool isLast = system.Fastest == 0 || 1.5 * system.Level(level).Length >= rest;
            ModalStep step = isLast ? Exactly(system, rest) : system.Level(level);
            motion.InputAt(at, input);
            step.Advance(left.AsSpan(0, system.Width), input, motion.InputRate, right);
            if (tracks.HasTravels)
            {
                step.Integrate(left.AsSpan(0, system.Width), input, motion.InputRate, turned);
                tracks.Travel(motion, turned, at, step.Length);
            }

            interval.Set(motion, at, step.Length, left, right);
            tracks.Look(interval, at, log);
            log.Work += (16L * system.Width) + (tracks.Count * (20L + (6 * system.Width)));
            if (tracks.MayCross && !tracks.MayCrossPlainly)
            {
                level = Shorter(system, level, isLast, rest);
                growth = 1;
                continue;
            }

            double part = tracks.MayCross ? tracks.FirstCrossing(interval, w.Events, log) : 2;
            log.Steps++;
            double length = step.Length;
            double start = w.State.Time;
            if (at == 0 && part > 0)
            {
                tracks.ReachStart(motion, log, start);
                ModalTracks.ReachSlipping(m, w.State, w.Plan, log, start, 0);
            }

            if (part <= 1)
            {
                lastFrom = at;
                at += part * length;
                Crossed = true;
                return;
            }

            if (tracks.MayRaise)
            {
                past.Add(interval, tracks, left, right);
            }

            at = isLast ? end : at + length;
            tracks.Arrive();
            (left, right) = (right, left);
            if (past.IsFull)
            {
                past.Settle(motion, tracks, left, at, start, log);
            }

            level = Math.Min(level + growth, ModalSystem.MostLevel);
            growth = 2;
        }
    }

    // The modes at the end stand on the right; of the interval that ended with a crossing, those at its start on the left.
    private void Settle(double start, RunLog log)
    {
        if (Crossed && at > lastFrom)
        {
            interval.Set(motion, lastFrom, at - lastFrom, left, right);
            tracks.Look(interval, lastFrom, log);
            log.Work += (16L * motion.System.Width) + (tracks.Count * (20L + (6 * motion.System.Width)));
            past.Add(interval, tracks, left, right);
        }

        past.Settle(motion, tracks, right, at, start, log);
    }

    private static int Shorter(ModalSystem system, int level, bool isLast, double rest) =>
        Math.Max(isLast ? Math.Min(level, system.LevelWithin(0.6 * rest)) : level - 1, 0);

    private ModalStep Exactly(ModalSystem system, double length)
    {
        ModalStep step = cache.Scratch(system.Modes);
        step.Fill(system, length);
        return step;
    }
}
