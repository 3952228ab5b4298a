namespace Driveline.Monitoring;

/// <summary>A quantity above a level until it falls below a lower one: when it began and ended, and its peak.</summary>
internal sealed class LevelEpisode(double from, double until)
{
    private bool open;
    private double startS;
    private double endS;
    private double peak;

    public bool IsOpen => open;

    public double StartS => startS;

    public double DurationS => endS - startS;

    public double Peak => peak;

    /// <summary>Takes the next value; true when the episode ended with it.</summary>
    /// <param name="timeS">Its time.</param>
    /// <param name="stepS">Time since the value before.</param>
    /// <param name="before">The value before.</param>
    /// <param name="value">The value.</param>
    /// <param name="follows">True when the value before counts.</param>
    public bool Step(double timeS, double stepS, double before, double value, bool follows) =>
        (open || value >= from) && Change(timeS, stepS, before, value, follows);

    /// <summary>Ends it at the last sample before a pause; true when it was open.</summary>
    public bool Cut(double timeS)
    {
        bool was = open;
        endS = was ? timeS : endS;
        open = false;
        return was;
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Flag(ref open);
        cursor.Number(ref startS);
        cursor.Number(ref endS);
        cursor.Number(ref peak);
    }

    private bool Change(double timeS, double stepS, double before, double value, bool follows)
    {
        if (!open)
        {
            open = true;
            startS = follows && before < from ? Crossing(from, timeS, stepS, before, value) : timeS;
            peak = value;
            return false;
        }

        peak = Math.Max(peak, value);
        if (value >= until)
        {
            return false;
        }

        endS = follows && before > value ? Crossing(until, timeS, stepS, before, value) : timeS;
        open = false;
        return true;
    }

    private static double Crossing(double level, double timeS, double stepS, double before, double value) =>
        timeS - (stepS * ((value - level) / (value - before)));
}
