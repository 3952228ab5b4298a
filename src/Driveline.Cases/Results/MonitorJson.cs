using System.Text.Json;
using Driveline.Monitoring;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes what a log shows as one JSON object for other programs.</summary>
/// <remarks>
/// Torques are in N·m and times on the clock of the log. What was not measured, is not known or has no bound is null. damage is
/// the share of the life used, 1 is all of it. Every caution is always written.
/// </remarks>
public static class MonitorJson
{
    /// <summary>Writes it to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(MonitorReport report, Stream stream) => Write(report, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes it to a stream, indented; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(MonitorReport report, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(report, json, language, units));

    /// <summary>Writes it as a value; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(MonitorReport report, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(report, nameof(report));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        json.WriteStartObject();
        CountsJson.Write(json, report);
        json.WriteStartArray("events");
        foreach (MonitorEvent seen in report.Events)
        {
            WriteEvent(json, seen);
        }

        json.WriteEndArray();
        json.WriteNumber("eventsLeftOut", report.EventsLeftOut);
        json.WriteNumber("cycles", report.Cycles);
        WriteWorkPeak(json, report.WorkPeak);
        WriteTrend(json, report.SlipTorque);
        json.WriteStartArray("lives");
        foreach (ConsumedLife life in report.Lives)
        {
            json.WriteStartObject();
            json.WriteString("part", life.Detail.Name);
            JsonNumbers.Band(json, "damage", life.Damage);
            json.WriteString("basis", life.Detail.Basis.Kind.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FindingJson.WriteAll(json, "findings", report.Findings, texts, units);
        CautionJson.WriteAll(json, MonitorCautions.Always, texts);
        json.WriteEndObject();
    }

    private static void WriteEvent(Utf8JsonWriter json, MonitorEvent seen)
    {
        json.WriteStartObject();
        json.WriteString("kind", seen.Kind.ToString());
        json.WriteNumber("startS", seen.StartS);
        JsonNumbers.Number(json, "durationS", seen.DurationS);
        JsonNumbers.Number(json, "peakTorqueNm", seen.PeakNm);
        JsonNumbers.Number(json, "slipAngleRad", seen.SlipAngleRad);
        JsonNumbers.Number(json, "energyJ", seen.EnergyJ);
        JsonNumbers.Number(json, "peakFaceTemperatureK", seen.PeakFaceK);
        json.WriteBoolean("atEngagement", seen.AtEngagement);
        json.WriteBoolean("isCut", seen.IsCut);
        json.WriteEndObject();
    }

    private static void WriteWorkPeak(Utf8JsonWriter json, WorkPeakEstimate learned)
    {
        json.WriteStartObject("workPeak");
        JsonNumbers.Band(json, "torqueNm", learned.Torque);
        JsonNumbers.Number(json, "atMostNm", learned.AtMost?.NewtonMeters);
        json.WriteNumber("peaks", learned.Peaks);
        json.WriteNumber("levelNm", learned.Level.NewtonMeters);
        json.WriteNumber("workedS", learned.Worked.Seconds);
        json.WriteNumber("horizonS", learned.Horizon.Seconds);
        JsonNumbers.Number(json, "scaleNm", learned.Tail?.Scale);
        JsonNumbers.Number(json, "shape", learned.Tail?.Shape);
        json.WriteEndObject();
    }

    private static void WriteTrend(Utf8JsonWriter json, SlipTorqueTrend? trend)
    {
        if (trend is null)
        {
            json.WriteNull("slipTorque");
            return;
        }

        json.WriteStartObject("slipTorque");
        json.WriteNumber("nowNm", trend.Now.NewtonMeters);
        json.WriteNumber("slips", trend.Slips);
        json.WriteNumber("changeNmPerHour", trend.NewtonMetersPerHour);
        json.WriteNumber("changeLowNmPerHour", trend.LowNewtonMetersPerHour);
        json.WriteNumber("changeHighNmPerHour", trend.HighNewtonMetersPerHour);
        json.WriteEndObject();
    }
}
