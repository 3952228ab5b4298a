using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Monitoring;

/// <content>What it has learned so far.</content>
public sealed partial class OverloadMonitor
{
    /// <summary>The highest torque of normal work in a time to come; unbounded above when the protection acted in work.</summary>
    /// <param name="horizon">That time of work; above 0 to 10⁵ h.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public WorkPeakEstimate LearnWorkPeak(Duration horizon) => LearnWorkPeak(horizon, ActedInWork.NotKnown);

    /// <summary>The highest torque of normal work in a time to come.</summary>
    /// <param name="horizon">That time of work; above 0 to 10⁵ h.</param>
    /// <param name="acted">Whether the protection has acted in normal work: nobody but the people there can say.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is out of its range.</exception>
    public WorkPeakEstimate LearnWorkPeak(Duration horizon, ActedInWork acted)
    {
        double hours = Guard.Positive(Si.Seconds(horizon), "Time to come", "s", nameof(horizon)) / 3600;
        return hours <= 1e5
            ? WorkPeakEstimate.Of(
                peaks, settings, gate, engagement.WorkedS / 3600, hours, trips.InWork + slips.InWork + peaks.SetAside > 0,
                    acted == ActedInWork.Never)
            : throw Guard.OutOfRange("Time to come", "up to 100000 h", hours, "h", nameof(horizon));
    }

    /// <summary>
    /// How the slip torque drifts; null while fewer than <see cref="SlipTorqueTrend.LeastSlips"/> slips of 1 rad or more were
    /// seen.
    /// </summary>
    public SlipTorqueTrend? SlipTorqueTrend() =>
        Monitoring.SlipTorqueTrend.TryOf(slipTorques.Hours, slipTorques.TorquesNm, out SlipTorqueTrend? trend) ? trend : null;

    /// <summary>The share of its fatigue life that a part has used up since the first sample.</summary>
    /// <exception cref="ArgumentNullException">The place is missing.</exception>
    public ConsumedLife ConsumedLife(FatigueDetail detail) =>
        Monitoring.ConsumedLife.Of(Guard.NotNull(detail, nameof(detail)), cycles, highestNm);
}
