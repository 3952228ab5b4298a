using System.Text.Json;
using Driveline.Monitoring;

namespace Driveline.Cases.Results;

/// <summary>Writes what a log counted: samples taken and refused, and what happened in them all together.</summary>
internal static class CountsJson
{
    public static void Write(Utf8JsonWriter json, MonitorReport report)
    {
        WriteSamples(json, report);
        WriteHistory(json, report.History);
    }

    private static void WriteSamples(Utf8JsonWriter json, MonitorReport report)
    {
        SampleCounts counts = report.Counts;
        json.WriteStartObject("samples");
        json.WriteNumber("taken", counts.Taken);
        json.WriteNumber("late", counts.Late);
        json.WriteNumber("duplicate", counts.Duplicate);
        json.WriteNumber("notANumber", counts.NotANumber);
        json.WriteNumber("outOfRange", counts.OutOfRange);
        json.WriteNumber("missing", counts.Missing);
        json.WriteNumber("gaps", counts.Gaps);
        json.WriteNumber("clockResets", counts.ClockResets);
        json.WriteNumber("withoutSpeedOut", counts.WithoutSpeedOut);
        json.WriteNumber("badRows", report.BadRows);
        json.WriteStartArray("firstBadRows");
        foreach (RowProblem row in report.FirstBadRows)
        {
            json.WriteStartObject();
            json.WriteNumber("line", row.Line);
            json.WriteString("trouble", row.Trouble.ToString());
            JsonNumbers.Text(json, "column", row.Column);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteHistory(Utf8JsonWriter json, MonitorHistory history)
    {
        json.WriteStartObject("history");
        json.WriteNumber("turnedS", history.Turned.Seconds);
        json.WriteNumber("workedS", history.Worked.Seconds);
        json.WriteNumber("engagements", history.Engagements);
        json.WriteNumber("overloads", history.Overloads);
        JsonNumbers.Number(json, "trips", history.Trips);
        JsonNumbers.Number(json, "tripsInWork", history.TripsInWork);
        JsonNumbers.Number(json, "slips", history.Slips);
        JsonNumbers.Number(json, "slipsInWork", history.SlipsInWork);
        JsonNumbers.Number(json, "slipTimeS", history.SlipTime?.Seconds);
        JsonNumbers.Number(json, "slipAngleRad", history.SlipAngle?.Radians);
        JsonNumbers.Number(json, "slipEnergyJ", history.SlipEnergy?.Joules);
        JsonNumbers.Number(json, "highestTorqueNm", history.HighestTorque?.NewtonMeters);
        JsonNumbers.Number(json, "faceTemperatureK", history.FaceTemperature?.Kelvins);
        JsonNumbers.Number(json, "highestFaceTemperatureK", history.HighestFaceTemperature?.Kelvins);
        json.WriteEndObject();
    }
}
