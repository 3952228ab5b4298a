namespace Driveline.Torsion;

/// <summary>What a run found: peaks, first slips and events. Cleared and filled anew by each run.</summary>
internal sealed class RunLog
{
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
    }

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

    public bool Chattered { get; set; }

    public bool EventsExhausted { get; set; }

    public bool StepsExhausted { get; set; }

    public EventRecord this[int index] => events[index];

    public void Clear()
    {
        for (int l = 0; l < Most.Length; l++)
        {
            Most[l] = MostAt[l] = Least[l] = LeastAt[l] = Scale[l] = 0;
            FirstSlip[l] = double.NaN;
            Struck[l] = false;
        }

        Count = 0;
        Steps = 0;
        Chattered = EventsExhausted = StepsExhausted = false;
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

    public void Peaks(Mechanism m, RunState x, StepSeries series)
    {
        for (int l = 0; l < m.Links; l++)
        {
            if (x.Links[l] is LinkState.Absent or LinkState.Free or LinkState.Open)
            {
                continue;
            }

            ReadOnlySpan<double> torque = series.Of(series.Torque, l);
            if (PeakSearch.CannotRaise(torque, Most[l], Least[l]))
            {
                continue;
            }

            double at = 0;
            if (PeakSearch.Raise(torque, 1, ref Most[l], ref at))
            {
                MostAt[l] = x.Time + (at * series.Length);
            }

            if (PeakSearch.Raise(torque, -1, ref Least[l], ref at))
            {
                LeastAt[l] = x.Time + (at * series.Length);
            }

            Scale[l] = Math.Max(Most[l], Least[l]);
        }
    }
}
