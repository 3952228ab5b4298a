namespace Driveline.Torsion;

/// <summary>What a run found: peaks, first slips and events. Cleared and filled anew by each run.</summary>
internal sealed class RunLog
{
    private const double Again = 1e-12;

    private EventRecord[] events = new EventRecord[64];

    public RunLog(int links)
    {
        Most = new double[links];
        MostAt = new double[links];
        Least = new double[links];
        LeastAt = new double[links];
        Scale = new double[links];
        FirstSlip = new double[links];
        Struck = new bool[links];
        Twist = new double[links];
        TwistAt = new double[links];
        ReverseTwist = new double[links];
        ReverseTwistAt = new double[links];
    }

    /// <summary>True when the largest twists are wanted beside the largest torques.</summary>
    public bool WatchesSprings { get; set; }

    /// <summary>Largest forward twist, rad, 0 when there was none.</summary>
    public double[] Twist { get; }

    public double[] TwistAt { get; }

    /// <summary>Largest reverse twist as a number of 0 or more.</summary>
    public double[] ReverseTwist { get; }

    public double[] ReverseTwistAt { get; }

    /// <summary>Largest forward torque, N·m, 0 when there was none.</summary>
    public double[] Most { get; }

    public double[] MostAt { get; }

    /// <summary>Largest reverse torque as a number of 0 or more.</summary>
    public double[] Least { get; }

    public double[] LeastAt { get; }

    /// <summary>Largest torque so far in either direction.</summary>
    public double[] Scale { get; }

    /// <summary>Time of the first slip or break; NaN when there was none.</summary>
    public double[] FirstSlip { get; }

    /// <summary>A rigid obstacle that was struck at speed: its own peak is unbounded.</summary>
    public bool[] Struck { get; }

    public int Count { get; private set; }

    public long Steps { get; set; }

    /// <summary>What the run has cost so far: one to two nanoseconds each.</summary>
    public long Work { get; set; }

    public long MostWork { get; set; } = long.MaxValue;

    public bool Chattered { get; set; }

    public bool EventsExhausted { get; set; }

    public bool StepsExhausted { get; set; }

    public bool WorkExhausted { get; set; }

    public bool IsCutOff => Chattered || EventsExhausted || StepsExhausted || WorkExhausted;

    public EventRecord this[int index] => events[index];

    public void Clear()
    {
        for (int l = 0; l < Most.Length; l++)
        {
            Most[l] = MostAt[l] = Least[l] = LeastAt[l] = Scale[l] = 0;
            Twist[l] = TwistAt[l] = ReverseTwist[l] = ReverseTwistAt[l] = 0;
            FirstSlip[l] = double.NaN;
            Struck[l] = false;
        }

        Count = 0;
        Steps = 0;
        Work = 0;
        Chattered = EventsExhausted = StepsExhausted = WorkExhausted = false;
    }

    public void Add(TransientEventKind kind, int link, double time)
    {
        if (Count == events.Length)
        {
            Array.Resize(ref events, 2 * events.Length);
        }

        events[Count++] = new EventRecord(kind, link, time);
    }

    public void Slipped(int link, double time)
    {
        if (double.IsNaN(FirstSlip[link]))
        {
            FirstSlip[link] = time;
        }
    }

    /// <summary>A torque that is the largest of its stretch, in either direction.</summary>
    public void Reach(int l, double torque, double time)
    {
        if (torque > Most[l])
        {
            Most[l] = torque;
            MostAt[l] = time;
        }

        if (-torque > Least[l])
        {
            Least[l] = -torque;
            LeastAt[l] = time;
        }

        Scale[l] = Math.Max(Most[l], Least[l]);
    }

    /// <summary>The largest value kept of a track so far, upward or downward.</summary>
    public double Best(in Track track, int way) => track.KeepsTwist
        ? (way > 0 ? Twist : ReverseTwist)[track.Link]
        : (way > 0 ? Most : Least)[track.Link];

    /// <summary>A value of a track, times its way; kept when it is higher than the largest so far by more than rounding.</summary>
    public void Raise(in Track track, int way, double value, double time)
    {
        double[] kept = track.KeepsTwist ? (way > 0 ? Twist : ReverseTwist) : way > 0 ? Most : Least;
        double[] at = track.KeepsTwist ? (way > 0 ? TwistAt : ReverseTwistAt) : way > 0 ? MostAt : LeastAt;
        if (value > kept[track.Link] * (1 + Again))
        {
            kept[track.Link] = value;
            at[track.Link] = time;
            Scale[track.Link] = Math.Max(Most[track.Link], Least[track.Link]);
        }
    }

    /// <summary>
    /// The largest values of a track that is a polynomial over a time, above the highest and below the negative of the other.
    /// </summary>
    public void Peaks(in Track track, ReadOnlySpan<double> series, double time, double length, double most, double least)
    {
        if (PeakSearch.CannotRaise(series, most, least))
        {
            return;
        }

        int l = track.Link;
        bool isTwist = track.KeepsTwist;
        Raise(series, 1, most, ref (isTwist ? Twist : Most)[l], ref (isTwist ? TwistAt : MostAt)[l], time, length);
        Raise(series, -1, least, ref (isTwist ? ReverseTwist : Least)[l], ref (isTwist ? ReverseTwistAt : LeastAt)[l], time, length);
        Scale[l] = Math.Max(Most[l], Least[l]);
    }

    public void Peaks(Mechanism m, RunState x, StepSeries series)
    {
        for (int l = 0; l < m.Links && !WorkExhausted; l++)
        {
            if (x.Links[l] is not (LinkState.Absent or LinkState.Free or LinkState.Open))
            {
                Raise(series.Of(series.Torque, l), l, x.Time, series.Length, Most, MostAt, Least, LeastAt);
                Scale[l] = Math.Max(Most[l], Least[l]);
            }

            if (WatchesSprings && m.IsElastic(l) && x.Links[l] != LinkState.Absent)
            {
                Raise(series.Of(series.Twist, l), l, x.Time, series.Length, Twist, TwistAt, ReverseTwist, ReverseTwistAt);
            }
        }
    }

    private void Raise(
        ReadOnlySpan<double> quantity, int l, double time, double length, double[] most, double[] mostAt, double[] least, double[] leastAt)
    {
        if (PeakSearch.CannotRaise(quantity, most[l], least[l]))
        {
            return;
        }

        Raise(quantity, 1, most[l], ref most[l], ref mostAt[l], time, length);
        Raise(quantity, -1, least[l], ref least[l], ref leastAt[l], time, length);
    }

    // A peak that comes again, higher by no more than rounding, is the first one.
    private void Raise(
        ReadOnlySpan<double> quantity, double sign, double above, ref double best, ref double bestAt, double time, double length)
    {
        double found = above;
        double at = 0;
        long work = 0;
        bool isRaised = PeakSearch.Raise(quantity, sign, ref found, ref at, ref work);
        Work += work;
        WorkExhausted |= work > PeakSearch.MostWork || Work > MostWork;
        if (isRaised && found > best * (1 + Again))
        {
            best = found;
            bestAt = time + (at * length);
        }
    }
}
