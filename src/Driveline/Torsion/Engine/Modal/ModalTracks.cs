namespace Driveline.Torsion;

/// <summary>What is watched over a stretch: torques and their capacities, slips that may end, ways to go, the drive's limits.</summary>
internal sealed class ModalTracks
{
    private readonly Track[] tracks;
    private readonly TrackSpan[] spans;
    private readonly double[] travelledEnd;
    private readonly bool[] mayCross;

    public ModalTracks(int links)
    {
        int most = Most(links);
        tracks = new Track[most];
        spans = new TrackSpan[most];
        travelledEnd = new double[most];
        mayCross = new bool[most];
    }

    /// <summary>Most tracks of so many links.</summary>
    public static int Most(int links) => (3 * links) + 1;

    public int Count { get; private set; }

    public bool HasTravels { get; private set; }

    /// <summary>True when something may pass its bound in the interval looked at.</summary>
    public bool MayCross { get; private set; }

    /// <summary>True when all that may is a polynomial there.</summary>
    public bool MayCrossPlainly { get; private set; }

    /// <summary>True when something may rise above its largest value so far.</summary>
    public bool MayRaise { get; private set; }

    public void Begin(Mechanism m, RunState x, Plan plan, RunLog log)
    {
        Count = 0;
        HasTravels = false;
        for (int l = 0; l < m.Links; l++)
        {
            ModalTrackList.OfLink(m, x, plan, l, this);
            if (log.WatchesSprings && m.IsElastic(l) && (x.Links[l] == LinkState.Locked || x.Relaxing[l]))
            {
                Add(ModalTrackList.Free(ModalRow.Twist(m, l), l, 0, false, true));
            }
        }

        ModalTrackList.OfDrive(m, x, this);
    }

    public void Add(in Track track)
    {
        HasTravels |= track.IsTravel;
        tracks[Count++] = track;
    }

    /// <summary>A speed of nothing is the rounding of what its modes amount to.</summary>
    public void Measure(ModalMotion motion)
    {
        for (int t = 0; t < Count; t++)
        {
            ref Track track = ref tracks[t];
            if (!track.IsTravel)
            {
                double size = Math.Abs(motion.Offset[track.Row]) + motion.System.SizeOf(track.Row, motion.Start);
                track.Scale = Math.Max(track.Scale, size);
            }
        }
    }

    /// <summary>Keeps the values at the start of a stretch.</summary>
    public void ReachStart(ModalMotion motion, RunLog log, double time)
    {
        for (int t = 0; t < Count; t++)
        {
            ref readonly Track track = ref tracks[t];
            if (track.Keeps)
            {
                double value = motion.Offset[track.Row] + ModalSystem.Dot(motion.System.Row(track.Row), motion.Start);
                log.Raise(track, 1, value, time);
                log.Raise(track, -1, -value, time);
            }
        }
    }

    /// <summary>Torques and twists of links that slip rise linearly: both ends of the stretch hold their largest values.</summary>
    public static void ReachSlipping(Mechanism m, RunState x, Plan plan, RunLog log, double time, double after)
    {
        for (int l = 0; l < m.Links; l++)
        {
            if (x.Links[l] is LinkState.SlipForward or LinkState.SlipBackward)
            {
                Track torque = ModalTrackList.Free(0, l, 0, true, false);
                double value = plan.Carried[l] + (plan.CarriedRate[l] * after);
                log.Raise(torque, 1, value, time);
                log.Raise(torque, -1, -value, time);
            }

            if (log.WatchesSprings && m.IsElastic(l) && !x.Relaxing[l] && x.Links[l] is not (LinkState.Absent or LinkState.Locked))
            {
                Track twist = ModalTrackList.Free(0, l, 0, false, true);
                log.Raise(twist, 1, x.Twist[l], time);
                log.Raise(twist, -1, -x.Twist[l], time);
            }
        }
    }

    public void Travel(ModalMotion motion, ReadOnlySpan<double> turned, double from, double length)
    {
        for (int t = 0; t < Count; t++)
        {
            ref readonly Track track = ref tracks[t];
            if (track.IsTravel)
            {
                travelledEnd[t] = track.Travelled + (length * motion.At(track.Row, from + (length / 2)))
                    + ModalSystem.Dot(motion.System.Row(track.Row), turned);
            }
        }
    }

    public void Look(ModalInterval interval, double from, RunLog log)
    {
        MayCross = MayRaise = false;
        MayCrossPlainly = true;
        double length = interval.Length;
        for (int t = 0; t < Count; t++)
        {
            ref Track track = ref tracks[t];
            track.Scale = track.KeepsTorque ? Math.Max(track.Scale, log.Scale[track.Link]) : track.Scale;
            TrackSpan span = interval.Look(track, track.Travelled, travelledEnd[t]);
            spans[t] = span;
            mayCross[t] = !(span.StaysBelow(track.Up + (track.UpRate * from), track.UpRate * length)
                && span.NegativeStaysBelow(track.Down + (track.DownRate * from), track.DownRate * length));
            MayRaise |= track.Keeps && span.MayExceed(log.Best(track, 1), log.Best(track, -1));
            MayCross |= mayCross[t];
            MayCrossPlainly &= !mayCross[t] || span.Ripple == 0;
        }
    }

    /// <summary>Part of the interval at which the first bound is crossed; 2 when none is.</summary>
    public double FirstCrossing(ModalInterval interval, EventSearch events, RunLog log)
    {
        events.Begin();
        for (int t = 0; t < Count; t++)
        {
            ref readonly Track track = ref tracks[t];
            if (!mayCross[t])
            {
                continue;
            }

            double up = track.Up + (track.UpRate * interval.From);
            double down = track.Down + (track.DownRate * interval.From);
            ReadOnlySpan<double> series = interval.Series(track, track.Travelled);
            if (!double.IsPositiveInfinity(up))
            {
                events.Offer(series, 1, up, track.UpRate * interval.Length, Math.Max(Math.Abs(up), track.Scale), track.UpMeans, track.Link);
            }

            if (!double.IsPositiveInfinity(down))
            {
                events.Offer(
                    series, -1, down, track.DownRate * interval.Length, Math.Max(Math.Abs(down), track.Scale), track.DownMeans, track.Link);
            }

            log.Work += 8L * series.Length;
        }

        log.Work += events.Work;
        log.WorkExhausted |= events.Work > PeakSearch.MostWork;
        return events.Part;
    }

    public ref readonly Track At(int track) => ref tracks[track];

    /// <summary>Copies what the last look has found.</summary>
    public void CopySpans(TrackSpan[] into) => Array.Copy(spans, into, Count);

    /// <summary>Goes on to the end of the interval.</summary>
    public void Arrive()
    {
        for (int t = 0; t < Count && HasTravels; t++)
        {
            tracks[t].Travelled = travelledEnd[t];
        }
    }
}
