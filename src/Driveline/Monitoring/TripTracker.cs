namespace Driveline.Monitoring;

/// <summary>Recognises a device that lets go: the speeds part while the torque falls from what it was.</summary>
/// <remarks>The highest torque before is that of this window and the one before, each as long as a trip may take.</remarks>
internal sealed class TripTracker(MonitorSettings settings)
{
    private bool tripped;
    private bool parted;
    private double partedS;
    private double windowS;
    private double windowNm;
    private double earlierNm;
    private double peakNm;
    private double startS;
    private double durationS;
    private double angleRad;
    private double energyJ;
    private bool atEngagement;
    private long trips;
    private long inWork;

    /// <summary>True from a trip until the speeds have met again or the drive has stopped.</summary>
    public bool Tripped => tripped;

    public long Trips => trips;

    public long InWork => inWork;

    public MonitorEvent Event() =>
        new(MonitorEventKind.Trip, startS, durationS, peakNm, angleRad, energyJ, double.NaN, atEngagement, isCut: false);

    /// <summary>Takes a sample; true when the device let go with it.</summary>
    public bool Step(in TorqueSample sample, double slip, bool turns, bool engaging)
    {
        Keep(in sample);
        if (!turns || slip < settings.TripSpeedShare / 2 * sample.SpeedInRadPerS)
        {
            tripped = false;
            parted = false;
            return false;
        }

        return Parts(in sample, slip, engaging);
    }

    /// <summary>Takes a sample at which the speeds have met.</summary>
    public void Hold(in TorqueSample sample)
    {
        Keep(in sample);
        tripped = false;
        parted = false;
    }

    /// <summary>Takes samples at which the speeds have met; the highest torque of them and before.</summary>
    public double Hold(ReadOnlySpan<TorqueSample> samples, double highestNm)
    {
        double newestNm = windowNm, fromS = windowS, withinS = settings.TripWithinS;
        for (int k = 0; k < samples.Length; k++)
        {
            double nm = samples[k].TorqueNm;
            if (samples[k].TimeS - fromS >= withinS)
            {
                windowNm = newestNm;
                Roll(samples[k].TimeS);
                fromS = windowS;
                newestNm = 0;
            }

            if (nm > newestNm)
            {
                newestNm = nm;
            }

            if (!(highestNm >= nm))
            {
                highestNm = nm;
            }
        }

        windowNm = newestNm;
        tripped = false;
        parted = false;
        return highestNm;
    }

    /// <summary>Takes over the slip that the trip began with.</summary>
    public void TakeOver(SlipTracker slip)
    {
        startS = Math.Min(startS, slip.StartS);
        durationS = partedS + durationS - startS;
        angleRad = slip.AngleRad;
        energyJ = slip.EnergyJ;
    }

    /// <summary>Forgets what was before a pause that ends at a time.</summary>
    public void Cut(double timeS)
    {
        windowS = timeS;
        tripped = false;
        parted = false;
        windowNm = 0;
        earlierNm = 0;
    }

    public void Exchange(ref SnapshotCursor cursor)
    {
        cursor.Flag(ref tripped);
        cursor.Flag(ref parted);
        cursor.Number(ref partedS);
        cursor.Number(ref windowS);
        cursor.Number(ref windowNm);
        cursor.Number(ref earlierNm);
        cursor.Count(ref trips);
        cursor.Count(ref inWork);
    }

    private void Keep(in TorqueSample sample)
    {
        if (sample.TimeS - windowS >= settings.TripWithinS)
        {
            Roll(sample.TimeS);
        }

        if (sample.TorqueNm > windowNm)
        {
            windowNm = sample.TorqueNm;
        }
    }

    private void Roll(double timeS)
    {
        earlierNm = timeS - windowS < 2 * settings.TripWithinS ? windowNm : 0;
        windowNm = 0;
        windowS = timeS;
    }

    private bool Parts(in TorqueSample sample, double slip, bool engaging)
    {
        bool apart = slip >= settings.TripSpeedShare * sample.SpeedInRadPerS;
        if (apart && !parted)
        {
            parted = true;
            partedS = sample.TimeS;
        }

        double highest = Math.Max(windowNm, earlierNm);
        if (tripped || !apart || highest < settings.PeaksFromNm / 2 || sample.TorqueNm > settings.TripTorqueShare * highest)
        {
            return false;
        }

        tripped = true;
        trips++;
        inWork += engaging ? 0 : 1;
        peakNm = highest;
        startS = partedS;
        durationS = sample.TimeS - partedS;
        atEngagement = engaging;
        angleRad = 0;
        energyJ = 0;
        return true;
    }
}
