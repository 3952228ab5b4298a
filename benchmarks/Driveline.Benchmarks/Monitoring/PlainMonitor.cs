using Driveline.Clutches;
using Driveline.Monitoring;

namespace Driveline.Benchmarks.Monitoring;

/// <summary>
/// The least that tells what a monitor tells, as one loop over local variables: order of the samples, engagement, overload, slip, trip,
/// heat of the clutch, load cycles, clusters of peaks.
/// </summary>
/// <remarks>
/// As many events as the monitor has, of the same kinds; the levels stand in the code. It keeps no details of them beyond peak and begin,
/// no list of peaks and slip torques, counts what it leaves out in one number, and its state can't be saved.
/// </remarks>
internal sealed class PlainMonitor(HeatPath path)
{
    private readonly PlateHeatStream plates = new(path);
    private readonly int[] stack = new int[1100];
    private readonly long[] table = new long[1025];

    /// <summary>Events of the last run.</summary>
    public int Events { get; private set; }

    public double Run(ReadOnlySpan<TorqueSample> samples)
    {
        int top = 0, events = 0;
        bool has = false, turns = false, engaging = false, overload = false, slipping = false, tripped = false, hot = false,
            cluster = false;
        double lastS = 0, lastNm = 0, lastSlip = 0, engagedS = 0, turnedS = 0, workedS = 0, overPeak = 0, overStart = 0, slipRad = 0,
            slipJ = 0, totalJ = 0, windowS = 0, windowNm = 0, earlierNm = 0, highestNm = 0, highestK = 0, peakNm = 0, lastAboveS = 0;
        long missing = 0, late = 0, peaks = 0;
        for (int k = 0; k < samples.Length; k++)
        {
            TorqueSample s = samples[k];
            double t = s.TimeS, nm = s.TorqueNm, before = s.SpeedInRadPerS, behind = s.SpeedOutRadPerS;
            if (!(Math.Abs(t) <= 1e12) || !(Math.Abs(nm) <= 1e7) || !(Math.Abs(before) <= 1e4) || Math.Abs(behind) > 1e4
                || (has && t <= lastS))
            {
                late++;
                continue;
            }

            double dt = has ? t - lastS : 0;
            bool follows = has && dt <= 1;
            missing += dt > 0.015 ? (long)Math.Round(dt / 0.01) - 1 : 0;
            if (has && !follows)
            {
                turns = engaging = overload = slipping = tripped = cluster = false;
                dt = 0;
            }

            has = true;
            highestNm = Math.Max(highestNm, nm);

            int point = (int)Math.Round(nm / 15.625);
            point = Math.Min(256, Math.Max(-256, point));
            if (top > 1 && (stack[top - 1] > stack[top - 2]) == (point > stack[top - 1]))
            {
                stack[top - 1] = point;
            }
            else if (top == 0 || point != stack[top - 1])
            {
                while (top >= 4)
                {
                    int inner = Math.Abs(stack[top - 2] - stack[top - 3]);
                    if (inner > Math.Abs(stack[top - 1] - stack[top - 2]) || inner > Math.Abs(stack[top - 3] - stack[top - 4]))
                    {
                        break;
                    }

                    table[inner]++;
                    stack[top - 3] = stack[top - 1];
                    top -= 2;
                }

                stack[top++] = point;
            }

            turnedS += turns ? dt : 0;
            workedS += turns && !engaging ? dt : 0;
            if (!turns && before >= 10)
            {
                turns = true;
                engaging = follows;
                engagedS = t;
            }
            else if (turns && before < 5)
            {
                turns = false;
            }

            if (engaging && (!turns || t - engagedS >= 5))
            {
                engaging = false;
                events++;
            }

            double slip = before - behind;
            double stepJ = 0;
            bool acts = slipping;
            if (!slipping && !tripped && slip >= 2)
            {
                slipping = true;
                slipRad = 0;
                slipJ = 0;
            }

            if (slipping)
            {
                double rad = (Math.Max(0, slip) + Math.Max(0, lastSlip)) / 2 * dt;
                stepJ = Math.Max(0, (nm + lastNm) / 2) * rad;
                slipRad += rad;
                slipJ += stepJ;
                totalJ += stepJ;
                if (!(slip >= 1))
                {
                    slipping = false;
                    events++;
                }
            }

            if (dt > 0)
            {
                double face = 303.15 + plates.Step(dt, stepJ / dt);
                highestK = Math.Max(highestK, face);
                if (!hot && face >= 600)
                {
                    hot = true;
                }
                else if (hot && face < 590)
                {
                    hot = false;
                    events++;
                }
            }

            if (t - windowS >= 1)
            {
                earlierNm = t - windowS < 2 ? windowNm : 0;
                windowNm = 0;
                windowS = t;
            }

            windowNm = Math.Max(windowNm, nm);
            if (!turns || slip < 0.25 * before)
            {
                tripped = false;
            }
            else if (!tripped && slip >= 0.5 * before)
            {
                double highest = Math.Max(windowNm, earlierNm);
                if (highest >= 300 && nm <= 0.3 * highest)
                {
                    tripped = true;
                    slipping = false;
                    events++;
                }
            }

            if (!overload)
            {
                if (nm >= 1000)
                {
                    overload = true;
                    overStart = follows ? t - (dt * ((nm - 1000) / (nm - lastNm))) : t;
                    overPeak = nm;
                }
            }
            else
            {
                overPeak = Math.Max(overPeak, nm);
                if (nm < 900)
                {
                    overload = false;
                    events++;
                }
            }

            bool above = turns && !engaging && nm >= 600;
            if (cluster)
            {
                if (above)
                {
                    peakNm = Math.Max(peakNm, nm);
                    lastAboveS = t;
                }
                else if (t - lastAboveS >= 2)
                {
                    cluster = false;
                    peaks += acts ? 0 : 1;
                }
            }
            else if (above)
            {
                cluster = true;
                peakNm = nm;
                lastAboveS = t;
            }

            lastS = t;
            lastNm = nm;
            lastSlip = slip;
        }

        Events = events;
        return events + turnedS + workedS + overPeak + overStart + slipRad + slipJ + totalJ + highestNm + highestK + peakNm + missing + late
            + peaks + top;
    }
}
