namespace Driveline.Monitoring;

/// <summary>Whether the PTO turns, for how long it has, and whether it is being engaged.</summary>
internal sealed class EngagementTracker(MonitorSettings settings)
{
    private readonly double restsBelowRadPerS = settings.TurnsFromRadPerS / 2;
    private bool turns;
    private bool engaging;
    private double startS;
    private double durationS;
    private double peakNm;
    private double turnedS;
    private double workedS;
    private long engagements;

    /// <summary>The speed below which the PTO no longer turns.</summary>
    public double RestsBelowRadPerS => restsBelowRadPerS;

    public bool Turns => turns;

    public bool Engaging => engaging;

    /// <summary>True while the PTO turns and is not being engaged.</summary>
    public bool Works => turns && !engaging;

    public double TurnedS => turnedS;

    public double WorkedS => workedS;

    public long Engagements => engagements;

    public MonitorEvent Event(bool isCut) => new(
        MonitorEventKind.Engagement, startS, durationS, peakNm, double.NaN, double.NaN, double.NaN, atEngagement: true, isCut);

    /// <summary>Takes a sample; true when an engagement ended with it.</summary>
    public bool Step(in TorqueSample sample, double stepS, bool follows)
    {
        if (turns && !engaging && sample.SpeedInRadPerS >= restsBelowRadPerS)
        {
            turnedS += stepS;
            workedS += stepS;
            return false;
        }

        return Change(in sample, stepS, follows);
    }

    /// <summary>Takes samples through which the PTO works.</summary>
    public void Work(double beforeS, ReadOnlySpan<TorqueSample> samples)
    {
        double turned = turnedS, worked = workedS;
        for (int k = 0; k < samples.Length; k++)
        {
            double timeS = samples[k].TimeS;
            turned += timeS - beforeS;
            worked += timeS - beforeS;
            beforeS = timeS;
        }

        turnedS = turned;
        workedS = worked;
    }

    /// <summary>Ends what went on at the last sample before a pause; true when the PTO was being engaged.</summary>
    public bool Cut(double timeS)
    {
        bool was = engaging;
        durationS = was ? timeS - startS : durationS;
        engaging = false;
        turns = false;
        return was;
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Flag(ref turns);
        cursor.Flag(ref engaging);
        cursor.Number(ref startS);
        cursor.Number(ref durationS);
        cursor.Number(ref peakNm);
        cursor.Number(ref turnedS);
        cursor.Number(ref workedS);
        cursor.Count(ref engagements);
    }

    private bool Change(in TorqueSample sample, double stepS, bool follows)
    {
        turnedS += turns ? stepS : 0;
        workedS += Works ? stepS : 0;
        if (!turns && sample.SpeedInRadPerS >= settings.TurnsFromRadPerS)
        {
            turns = true;
            if (follows)
            {
                engagements++;
                engaging = true;
                startS = sample.TimeS;
                peakNm = sample.TorqueNm;
            }
        }
        else if (turns && sample.SpeedInRadPerS < restsBelowRadPerS)
        {
            turns = false;
        }

        if (!engaging)
        {
            return false;
        }

        peakNm = Math.Max(peakNm, sample.TorqueNm);
        durationS = sample.TimeS - startS;
        engaging = turns && durationS < settings.EngagementS;
        return !engaging;
    }
}
