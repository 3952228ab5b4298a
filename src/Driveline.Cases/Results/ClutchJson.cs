using System.Text.Json;
using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes everything about one slip clutch as one JSON object for other programs.</summary>
/// <remarks>
/// Torques are at the clutch, in N·m. slipTorqueNm is the torque while it slips, breakawayTorqueNm the torque that starts a slip; its
/// high is null while nothing bounds what rust holds. Forces, lengths and pressures are expected values. What is not known, not
/// reached or without bound is null. With a setting, all values are those of the clutch as it is to be set. heat.powerW is made at
/// the expected torque with the machine blocked; the times are those at the highest torque, from a warm day's temperature.
/// </remarks>
public static class ClutchJson
{
    /// <summary>Writes the clutch to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(ClutchReview review, Stream stream) => Write(review, [], stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the clutch with service procedures to a stream, indented; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(
        ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(review, procedures, json, language, units));

    /// <summary>Writes the clutch with service procedures as a value.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(
        ClutchReview review, IReadOnlyList<ServiceProcedure> procedures, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(review, nameof(review));
        Guard.NotNull(procedures, nameof(procedures));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        json.WriteStartObject();
        json.WriteString("name", review.Device.Name);
        json.WriteString("source", review.Torque.Source.ToString());
        json.WriteString("assumption", review.Torque.Assumption.ToString());
        json.WriteString("trust", review.Torque.Trust.ToString());
        JsonNumbers.Band(json, "slipTorqueNm", review.Device.Running);
        JsonNumbers.Band(json, "breakawayTorqueNm", review.Device.Breakaway);
        JsonNumbers.Number(json, "clampForceN", review.ClampForce?.Newtons);
        JsonNumbers.Number(json, "springLengthMm", review.SpringLength?.Millimeters);
        JsonNumbers.Number(json, "travelToSolidMm", review.TravelToSolid?.Millimeters);
        JsonNumbers.Number(json, "facingPressureKPa", review.FacingPressure?.Kilopascals);
        WriteSetting(json, review.Setting);
        json.WriteStartObject("heat");
        JsonNumbers.Number(json, "powerW", review.Slip is { } slip ? (double)slip.PeakPower.Watts : null);
        JsonNumbers.Number(json, "timeToLimitS", review.TimeToLimit?.Seconds);
        JsonNumbers.Number(json, "timeToMaximumS", review.TimeToMaximum?.Seconds);
        JsonNumbers.Number(json, "timeToSmokeS", review.TimeToSmoke?.Seconds);
        json.WriteEndObject();
        FindingJson.WriteAll(json, "findings", review.Findings, texts, units);
        json.WriteStartArray("service");
        foreach (ServiceProcedure procedure in procedures)
        {
            WriteProcedure(json, procedure, texts, units);
        }

        json.WriteEndArray();
        CautionJson.WriteAll(json, review.Cautions, texts);
        JsonNumbers.Text(json, "weakestBasis", review.WeakestBasis?.Kind.ToString());
        json.WriteEndObject();
    }

    private static void WriteSetting(Utf8JsonWriter json, ClutchSetting? setting)
    {
        if (setting is null)
        {
            return;
        }

        json.WriteNumber("wantedTorqueNm", setting.Wanted.NewtonMeters);
        json.WriteBoolean("isReached", setting.IsReached);
        JsonNumbers.Number(json, "nutTurns", setting.NutTurns);
        JsonNumbers.Number(json, "torquePerTurnNm", setting.TorquePerTurn?.NewtonMeters);
        JsonNumbers.Number(json, "torquePerMmWearNm", setting.TorqueLostPerMillimeterOfWear?.NewtonMeters);
    }

    private static void WriteProcedure(Utf8JsonWriter json, ServiceProcedure procedure, Texts texts, DisplayUnits units)
    {
        json.WriteStartObject();
        json.WriteString("code", procedure.Code);
        json.WriteString("title", texts.Of(procedure.Code));
        json.WriteStartArray("steps");
        foreach (ServiceStep step in procedure.Steps)
        {
            json.WriteStartObject();
            json.WriteString("code", step.Code);
            json.WriteString("text", texts.Of(step.Words, units));
            CautionJson.WriteAll(json, step.Cautions, texts);
            json.WriteString("source", texts.Name(step.Source.Document));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
