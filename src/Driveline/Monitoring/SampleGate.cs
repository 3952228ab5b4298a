using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <summary>Decides which samples are taken, and counts the rest.</summary>
internal sealed class SampleGate
{
    public const double MostNm = 1e7;
    public const double MostRadPerS = 1e4;
    public const double MostS = 1e12;

    private const double MostMissing = 1e12;

    private readonly double periodS;
    private readonly double longestStepS;
    private readonly double smoothStepS;
    private double lastS;
    private bool hasLast;
    private bool ended;
    private bool clockIsNew;
    private bool flows;

    public long Taken;
    public long Late;
    public long Duplicate;
    public long NotANumber;
    public long OutOfRange;
    public long Missing;
    public long Gaps;
    public long ClockResets;
    public long WithoutSpeedOut;

    public SampleGate(MonitorSettings settings)
    {
        periodS = settings.PeriodS;
        longestStepS = settings.LongestStepS;
        smoothStepS = Math.Min(longestStepS, 1.5 * periodS);
    }

    /// <summary>True when a sample that comes soon after the last one is simply the next.</summary>
    public bool Flows => flows;

    /// <summary>Time of the last sample taken.</summary>
    public double LastS => lastS;

    /// <summary>The longest step after which no sample is missing.</summary>
    public double SmoothStepS => smoothStepS;

    /// <summary>Takes samples known to be simply the next ones.</summary>
    public void Take(double newestS, int count)
    {
        lastS = newestS;
        Taken += count;
    }

    /// <summary>What the sample is, and the time since the one before (0 for the first).</summary>
    public SampleStep Judge(in TorqueSample sample, out double stepS)
    {
        double speedOut = sample.SpeedOutRadPerS;
        stepS = sample.TimeS - lastS;
        if (flows && stepS > 0 && stepS <= smoothStepS && sample.TimeS <= MostS && Math.Abs(sample.TorqueNm) <= MostNm
            && Math.Abs(sample.SpeedInRadPerS) <= MostRadPerS && Math.Abs(speedOut) <= MostRadPerS)
        {
            lastS = sample.TimeS;
            Taken++;
            return SampleStep.Next;
        }

        return JudgeAgain(in sample, out stepS);
    }

    /// <summary>Nothing goes on across the last sample.</summary>
    public void End()
    {
        ended = true;
        flows = false;
    }

    /// <summary>The next sample may have any time.</summary>
    public void RestartClock()
    {
        clockIsNew = hasLast;
        flows = false;
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Number(ref lastS);
        cursor.Flag(ref hasLast);
        cursor.Flag(ref ended);
        cursor.Flag(ref clockIsNew);
        cursor.Count(ref Taken);
        cursor.Count(ref Late);
        cursor.Count(ref Duplicate);
        cursor.Count(ref NotANumber);
        cursor.Count(ref OutOfRange);
        cursor.Count(ref Missing);
        cursor.Count(ref Gaps);
        cursor.Count(ref ClockResets);
        cursor.Count(ref WithoutSpeedOut);
        flows = hasLast && !ended && !clockIsNew;
    }

    private SampleStep JudgeAgain(in TorqueSample sample, out double stepS)
    {
        stepS = 0;
        if (!Guard.IsFinite(sample.TimeS) || !Guard.IsFinite(sample.TorqueNm) || !Guard.IsFinite(sample.SpeedInRadPerS))
        {
            NotANumber++;
            return SampleStep.Dropped;
        }

        if (Math.Abs(sample.TimeS) > MostS || Math.Abs(sample.TorqueNm) > MostNm || Math.Abs(sample.SpeedInRadPerS) > MostRadPerS
            || Math.Abs(sample.SpeedOutRadPerS) > MostRadPerS)
        {
            OutOfRange++;
            return SampleStep.Dropped;
        }

        SampleStep step = Order(sample.TimeS, ref stepS);
        if (step != SampleStep.Dropped)
        {
            hasLast = true;
            flows = true;
            lastS = sample.TimeS;
            ended = false;
            clockIsNew = false;
            Taken++;
            WithoutSpeedOut += double.IsNaN(sample.SpeedOutRadPerS) ? 1 : 0;
        }

        return step;
    }

    private SampleStep Order(double timeS, ref double stepS)
    {
        if (!hasLast)
        {
            return SampleStep.First;
        }

        if (clockIsNew)
        {
            ClockResets++;
            return SampleStep.OnNewClock;
        }

        double step = timeS - lastS;
        if (step.Equals(0.0))
        {
            Duplicate++;
            return SampleStep.Dropped;
        }

        if (step < 0)
        {
            Late++;
            return SampleStep.Dropped;
        }

        stepS = step;
        if (step > 1.5 * periodS)
        {
            Missing += (long)Math.Min(MostMissing, Math.Round(step / periodS) - 1);
        }

        if (step > longestStepS)
        {
            Gaps++;
            return SampleStep.AfterGap;
        }

        return ended ? SampleStep.AfterEnd : SampleStep.Next;
    }
}
