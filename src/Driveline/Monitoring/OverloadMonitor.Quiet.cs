namespace Driveline.Monitoring;

/// <content>The samples of quiet work, which are nearly all: each tracker takes a run of them in one go.</content>
public sealed partial class OverloadMonitor
{
    /// <summary>A run is no longer, so that it stays near the processor.</summary>
    private const int LongestRun = 256;

    /// <summary>
    /// Takes the samples at the front that follow smoothly while the PTO works, the device holds and nothing is above its level, so that no
    /// event can come of them; how many they were. Bit for bit what they would do one by one.
    /// </summary>
    private int TakeQuiet(ReadOnlySpan<TorqueSample> samples)
    {
        if (!TakesRuns || !gate.Flows || !engagement.Works || overload.IsOpen || slips.IsOpen || thermometer.IsTooHot)
        {
            return 0;
        }

        int count = QuietCount(samples.Slice(0, Math.Min(samples.Length, LongestRun)));
        if (count == 0)
        {
            return 0;
        }

        ReadOnlySpan<TorqueSample> run = samples.Slice(0, count);
        engagement.Work(gate.LastS, run);
        thermometer.Cool(gate.LastS, run);
        highestNm = trips.Hold(run, highestNm);
        cycles.Add(run);
        peaks.Work(run);
        last = run[count - 1];
        lastSlip = last.SpeedInRadPerS - (last.SpeedOutRadPerS * inPerOut);
        gate.Take(last.TimeS, count);
        return count;
    }

    private int QuietCount(ReadOnlySpan<TorqueSample> samples)
    {
        double beforeS = gate.LastS, smoothS = gate.SmoothStepS, belowNm = settings.OverloadFromNm,
            turnsFrom = engagement.RestsBelowRadPerS;
        double ratio = inPerOut, slipFrom = slipFromRadPerS, meets = meetShare;
        for (int k = 0; k < samples.Length; k++)
        {
            ref readonly TorqueSample sample = ref samples[k];
            double timeS = sample.TimeS, speedIn = sample.SpeedInRadPerS, speedOut = sample.SpeedOutRadPerS, nm = sample.TorqueNm;
            double stepS = timeS - beforeS, slip = speedIn - (speedOut * ratio);
            if (!(stepS > 0 && stepS <= smoothS && nm < belowNm && nm >= -SampleGate.MostNm && slip < slipFrom && slip < meets * speedIn
                && speedIn >= turnsFrom && speedIn <= SampleGate.MostRadPerS && Math.Abs(speedOut) <= SampleGate.MostRadPerS
                && timeS <= SampleGate.MostS))
            {
                return k;
            }

            beforeS = timeS;
        }

        return samples.Length;
    }
}
