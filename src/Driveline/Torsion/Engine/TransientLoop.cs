namespace Driveline.Torsion;

/// <summary>Runs a mechanism from its state to the end, event by event.</summary>
internal static class TransientLoop
{
    /// <summary>Step length in radians of the fastest rate.</summary>
    public const double Reach = 2;

    private const int SeriesTermWork = 8;
    private const int RebuildWork = 2;
    private const int ChatterEvents = 200;
    private const double ChatterWindow = 1e-7;

    public static void Run(Mechanism m, TransientWorkspace w, double end, TransientLimits limits, TransientTrace trace)
    {
        RunState x = w.State;
        RunLog log = w.Log;
        double windowStart = 0;
        int windowEvents = 0;
        log.Clear();
        log.MostWork = limits.Work;
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
            bool crossed;
            bool hits;
            if (!w.UsesSeries && w.Stretch.TryRun(m, w, limits, next, ref trace))
            {
                crossed = w.Stretch.Crossed;
                hits = w.Stretch.Hits;
            }
            else
            {
                crossed = SeriesStep(m, w, next, end, ref trace, out hits);
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
            log.EventsExhausted = log.Count > limits.Events;
            if (IsSpent(log, limits) || log.Chattered || log.EventsExhausted)
            {
                return;
            }

            if (changed || hits)
            {
                Rebuild(m, w);
            }
        }
    }

    // One step by series, up to the first crossing in it.
    private static bool SeriesStep(
        Mechanism m, TransientWorkspace w, double next, double end, ref TransientTrace trace, out bool hits)
    {
        RunState x = w.State;
        RunLog log = w.Log;
        double h = Step(m, w, next - x.Time);
        hits = h == next - x.Time;
        double part = w.Events.First(m, x, w.Plan, w.Series, log.Scale);
        if (part < 1)
        {
            w.Series.Shorten(m, part);
        }

        hits &= part >= 1;
        log.Steps++;
        log.Work += SeriesWork(m, w.Series.Degree) + w.Events.Work;
        log.WorkExhausted |= w.Events.Work > PeakSearch.MostWork;
        if (part > 0)
        {
            log.Peaks(m, x, w.Series);
            w.Energy.Add(m, x, w.Plan, w.Series);
            trace.Add(w.Series, x.Time, hits && next == end, log);
            w.Series.Finish(m, x);
            x.Time = hits ? next : x.Time + w.Series.Length;
        }

        return part <= 1;
    }

    private static bool IsSpent(RunLog log, TransientLimits limits)
    {
        limits.Stop.ThrowIfCancellationRequested();
        log.StepsExhausted = log.Steps > limits.Steps;
        log.WorkExhausted |= log.Work > limits.Work;
        return log.StepsExhausted || log.WorkExhausted;
    }

    /// <summary>Work of one step by series, with its search for events and peaks and its energies.</summary>
    public static long SeriesWork(Mechanism m, int degree) => (long)SeriesTermWork * (m.Rotors + m.Links + 1) * (degree + 1);

    private static void Rebuild(Mechanism m, TransientWorkspace w)
    {
        w.Log.Work += RebuildWork * (long)(m.Rotors + m.Links) * (m.Rotors + m.Links);
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
}
