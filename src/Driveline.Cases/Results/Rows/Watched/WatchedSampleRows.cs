using Driveline.Monitoring;

namespace Driveline.Cases.Results;

/// <summary>What a log counted: samples taken and refused, and what happened in them all together.</summary>
internal static class WatchedSampleRows
{
    private static readonly ShapeOf<RowProblem> BadRow = new ShapeOf<RowProblem>("badRow", "A row of the log that could not be read.")
        .Whole("line", r => r.Line, "Its line.")
        .Choice("trouble", r => r.Trouble, "What is wrong with it.")
        .MaybeText("column", r => r.Column, "Name of the column; null when it is about none.");

    public static readonly ShapeOf<MonitorReport> Samples = new ShapeOf<MonitorReport>("samples", "Samples taken and refused.")
        .Whole("taken", r => r.Counts.Taken, "Taken.")
        .Whole("late", r => r.Counts.Late, "Refused: before one that was taken.")
        .Whole("duplicate", r => r.Counts.Duplicate, "Refused: at the time of one that was taken.")
        .Whole("notANumber", r => r.Counts.NotANumber, "Refused: torque or speed is no number.")
        .Whole("outOfRange", r => r.Counts.OutOfRange, "Refused: torque or speed beyond what any driveline has.")
        .Whole("missing", r => r.Counts.Missing, "That should have come by the sampling rate, and did not.")
        .Whole("gaps", r => r.Counts.Gaps, "Gaps in time.")
        .Whole("clockResets", r => r.Counts.ClockResets, "Times that the clock began anew.")
        .Whole("withoutSpeedOut", r => r.Counts.WithoutSpeedOut, "Taken without a speed behind the clutch.")
        .Whole("badRows", r => r.BadRows, "Rows that could not be read.")
        .List("firstBadRows", r => r.FirstBadRows, BadRow, "The first of them.");

    public static readonly ShapeOf<MonitorHistory> History = new ShapeOf<MonitorHistory>("watchedHistory", "All that happened in the log.")
        .Number("turnedS", h => h.Turned.Seconds, "Time that the PTO turned, s.")
        .Number("workedS", h => h.Worked.Seconds, "Time of work, s.")
        .Whole("engagements", h => h.Engagements, "Engagements of the PTO.")
        .Whole("overloads", h => h.Overloads, "Overloads.")
        .Number("trips", h => h.Trips, "Trips; null when the log cannot show them.")
        .Number("tripsInWork", h => h.TripsInWork, "Trips in work; null when the log cannot show them.")
        .Number("slips", h => h.Slips, "Slips; null when the log cannot show them.")
        .Number("slipsInWork", h => h.SlipsInWork, "Slips in work; null when the log cannot show them.")
        .Number("slipTimeS", h => h.SlipTime?.Seconds, "Time of all slips, s.")
        .Number("slipAngleRad", h => h.SlipAngle?.Radians, "How far all slipped, rad.")
        .Number("slipEnergyJ", h => h.SlipEnergy?.Joules, "Heat of all slips, J.")
        .Number("highestTorqueNm", h => h.HighestTorque?.NewtonMeters, "Highest torque, N·m.")
        .Number("faceTemperatureK", h => h.FaceTemperature?.Kelvins, "Temperature of the faces at the end, K.")
        .Number("highestFaceTemperatureK", h => h.HighestFaceTemperature?.Kelvins, "Highest temperature of the faces, K.");
}
