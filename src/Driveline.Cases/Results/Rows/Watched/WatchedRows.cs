using Driveline.Monitoring;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>What a log shows.</summary>
internal static class WatchedRows
{
    private static readonly ShapeOf<MonitorEvent> Event = new ShapeOf<MonitorEvent>("watchedEvent", "Something the log shows.")
        .Choice("kind", e => e.Kind, "What it is.")
        .Number("startS", e => e.StartS, "When it began, on the clock of the log, s.")
        .Number("durationS", e => e.DurationS, "How long it lasted, s.")
        .Number("peakTorqueNm", e => e.PeakNm, "Highest torque in it, N·m.")
        .Number("slipAngleRad", e => e.SlipAngleRad, "How far the clutch slipped, rad; null when it did not, or nobody knows.")
        .Number("energyJ", e => e.EnergyJ, "Heat of the slip, J; null when there was none, or nobody knows.")
        .Number("peakFaceTemperatureK", e => e.PeakFaceK, "Highest temperature of the faces, K; null when not known.")
        .Flag("atEngagement", e => e.AtEngagement, "True while the PTO was engaged.")
        .Flag("isCut", e => e.IsCut, "True when a gap or the end of the log cut it short.");

    private static readonly ShapeOf<WorkPeakEstimate> WorkPeak = new ShapeOf<WorkPeakEstimate>(
            "learnedWorkPeak", "The highest torque that work is to be expected to bring within a time.")
        .Band("torqueNm", w => w.Torque, "It, N·m; null when there were too few peaks.")
        .Number("atMostNm", w => w.AtMost?.NewtonMeters, "What it is at most, N·m; null when that is not known either.")
        .Whole("peaks", w => w.Peaks, "Peaks it was learned from.")
        .Number("levelNm", w => w.Level.NewtonMeters, "Torque above which a peak counts, N·m.")
        .Number("workedS", w => w.Worked.Seconds, "Time of work in which they were, s.")
        .Number("horizonS", w => w.Horizon.Seconds, "The time asked for, s.")
        .Number("scaleNm", w => w.Tail?.Scale, "Scale of the tail, N·m; null when none was fitted.")
        .Number("shape", w => w.Tail?.Shape, "Shape of the tail; null when none was fitted.");

    private static readonly ShapeOf<SlipTorqueTrend> Trend = new ShapeOf<SlipTorqueTrend>("slipTorqueTrend", "How the slip torque drifts.")
        .Number("nowNm", t => t.Now.NewtonMeters, "It now, N·m.")
        .Whole("slips", t => t.Slips, "Slips it was learned from.")
        .Number("changeNmPerHour", t => t.NewtonMetersPerHour, "Its change in an hour of work, N·m.")
        .Number("changeLowNmPerHour", t => t.LowNewtonMetersPerHour, "Lowest change, 95 % interval.")
        .Number("changeHighNmPerHour", t => t.HighNewtonMetersPerHour, "Highest change, 95 % interval.");

    private static readonly ShapeOf<ConsumedLife> Life = new ShapeOf<ConsumedLife>(
            "consumedLife", "What a bolt or part has used of its life.")
        .Text("part", l => l.Detail.Name, "Name.")
        .Band("damage", l => l.Damage, "Share of its life, 1 is all of it.")
        .Object("basis", l => l.Detail.Basis, BasisRows.Shape, "Where its curve of fatigue comes from.");

    public static readonly ShapeOf<MonitorReport> Shape = new ShapeOf<MonitorReport>(
            "watch", "What a log of torque and speeds shows; torques are at the PTO.")
        .Object("samples", r => r, WatchedSampleRows.Samples, "Samples taken and refused.")
        .Object("history", r => r.History, WatchedSampleRows.History, "All that happened, what is left out below included.")
        .List("events", r => r.Events, Event, "Events in the order they ended, the first 10 000.")
        .Whole("eventsLeftOut", r => r.EventsLeftOut, "Events that are not listed.")
        .Number("cycles", r => r.Cycles, "Cycles of torque, counted by rainflow; half cycles count one half.")
        .Object("workPeak", r => r.WorkPeak, WorkPeak, "The highest torque of work.")
        .Maybe("slipTorque", r => r.SlipTorque, Trend, "How the slip torque drifts; null when too few slips show it.")
        .List("lives", r => r.Lives, Life, "The fatigue that was followed.")
        .List("findings", r => r.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("cautions", _ => MonitorCautions.Always, CautionRows.Shape, "Cautions; show them all.");
}
