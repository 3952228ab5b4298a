namespace Driveline.Torsion;

/// <summary>Runs a mechanism from its state to the end, event by event.</summary>
internal static class TransientLoop
{
    /// <summary>Step length in radians of the fastest rate.</summary>
    public const double Reach = 2;

    private const int ChatterEvents = 200;
    private const double ChatterWindow = 1e-7;

    public static void Run(
        Mechanism m,
        TransientWorkspace w,
        double end,
        int mostEvents,
        long mostSteps,
        int traceLink,
        bool traceSpeed,
        Span<double> trace)
    {
        RunState x = w.State;
        RunLog log = w.Log;
        int traced = 0;
        double windowStart = 0;
        int windowEvents = 0;
        log.Clear();
        w.Energy.Clear();
        Transitions.Begin(m, x);
        Rebuild(m, w);
        w.Energy.Start = EnergyMeter.Stored(m, x);
        if (Transitions.OnTime(m, x, w.Plan, log, w.Energy))
        {
            Rebuild(m, w);
        }

        while (x.Time < end)
        {
            double next = Transitions.NextTime(m, x, end);
            if (w.Plan.Rate * (next - x.Time) > Reach * (1 + 1e-9) && trace.Length == 0 && !log.WatchesSprings
                && w.Propagator.TryStep(m, x, w.Plan, w.Series, log, w.Energy))
            {
                log.StepsExhausted = log.Steps > mostSteps;
                if (log.StepsExhausted)
                {
                    return;
                }

                continue;
            }

            double h = Step(m, w, next - x.Time);
            bool hits = h == next - x.Time;
            double part = w.Events.First(m, x, w.Plan, w.Series, log.Scale);
            bool crossed = part <= 1;
            if (part < 1)
            {
                w.Series.Shorten(m, part);
            }

            hits &= part >= 1;
            log.Steps++;
            if (part > 0)
            {
                log.Peaks(m, x, w.Series);
                w.Energy.Add(m, x, w.Plan, w.Series);
                traced = Trace(w, end, hits && next == end, traceLink, traceSpeed, trace, traced);
                w.Series.Finish(m, x);
                x.Time = hits ? next : x.Time + w.Series.Length;
            }

            bool changed = crossed;
            if (w.Plan.HasRamps)
            {
                w.Plan.AtTime(m, x);
            }

            if (crossed)
            {
                if (x.Time - windowStart > ChatterWindow * end)
                {
                    windowStart = x.Time;
                    windowEvents = 0;
                }

                log.Chattered = ++windowEvents > ChatterEvents;
                Transitions.Apply(m, x, w.Plan, log, w.Energy, w.Events.Kind, w.Events.Link);
            }

            changed |= hits && Transitions.OnTime(m, x, w.Plan, log, w.Energy);
            changed |= Transitions.Settle(m, x, w.Plan, log);
            log.EventsExhausted = log.Count > mostEvents;
            log.StepsExhausted = log.Steps > mostSteps;
            if (log.Chattered || log.EventsExhausted || log.StepsExhausted)
            {
                return;
            }

            if (changed || hits)
            {
                Rebuild(m, w);
            }
        }
    }

    private static void Rebuild(Mechanism m, TransientWorkspace w)
    {
        w.Propagator.Forget();
        w.Plan.Build(m, w.State);
        if (Transitions.Follow(m, w.State, w.Plan))
        {
            w.Plan.Build(m, w.State);
        }
    }

    private static double Step(Mechanism m, TransientWorkspace w, double left)
    {
        double rate = w.Plan.Rate;
        double h = rate * left > Reach * (1 + 1e-9) ? Reach / rate : left;
        int degree = m.HasJoints ? StepSeries.MaxDegree : StepSeries.DegreeFor(h * rate);
        w.Series.Compute(m, w.State, w.Plan, h, degree);
        if (m.HasJoints)
        {
            double tail = SeriesTail.Of(w.Series, m);
            if (!(tail <= 1e-16))
            {
                double part = double.IsNaN(tail) || double.IsInfinity(tail) ? 0.01 : Math.Pow(1e-17 / tail, 1.0 / degree);
                h *= part;
                w.Series.Compute(m, w.State, w.Plan, h, degree);
            }
        }

        return h;
    }

    // Samples at k·end/(n−1), k = 0 … n−1.
    private static int Trace(TransientWorkspace w, double end, bool last, int link, bool speed, Span<double> trace, int traced)
    {
        double start = w.State.Time;
        double h = w.Series.Length;
        while (traced < trace.Length)
        {
            double at = trace.Length == 1 ? 0 : end * traced / (trace.Length - 1);
            if (at > start + h && !(last && traced == trace.Length - 1))
            {
                break;
            }

            double s = h > 0 ? Math.Min((at - start) / h, 1) : 0;
            trace[traced++] = Polynomial.Value(w.Series.Of(speed ? w.Series.Speed : w.Series.Torque, link), s);
        }

        return traced;
    }
}
