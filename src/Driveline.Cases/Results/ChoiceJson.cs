using System.Text.Json;
using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes a choice of bolts, best first, and of clutch settings as one JSON object for other programs.</summary>
/// <remarks>
/// As <see cref="VerdictJson"/>: torques in N·m, referred to the tractor's PTO; what is not known or has no bound is null. A
/// probability is never written below 0.001 or above 0.999. passProbability is the chance, at least, that the bolt does both its
/// jobs: one work peak leaves it whole, and an overload breaks it before any part is damaged. Every caution is always written.
/// Torques of settings are at the clutch itself: lowNm and highNm of a window are expected ones while it slips.
/// </remarks>
public static class ChoiceJson
{
    /// <summary>Writes the choice to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(BoltChoice choice, Stream stream) => Write(choice, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the choice to a stream, indented; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(BoltChoice choice, Stream stream, Language language, DisplayUnits units) =>
        Write(choice, [], stream, language, units);

    /// <summary>
    /// Writes the choice and the settings of the clutches to a stream, indented; language and units matter for the messages only.
    /// </summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(
        BoltChoice choice, IReadOnlyList<ClutchChoice> settings, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(choice, settings, json, language, units));

    /// <summary>Writes the choice as a value; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(BoltChoice choice, Utf8JsonWriter json, Language language, DisplayUnits units) =>
        Write(choice, [], json, language, units);

    /// <summary>Writes the choice and the settings of the clutches as a value; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(
        BoltChoice choice, IReadOnlyList<ClutchChoice> settings, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(choice, nameof(choice));
        Guard.NotNull(settings, nameof(settings));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        json.WriteStartObject();
        JsonNumbers.Text(json, "device", choice.Place?.Name);
        JsonNumbers.Text(json, "fitted", NameOf(choice.Place));
        JsonNumbers.Text(json, "specified", NameOf(choice.Specified));
        JsonNumbers.Text(json, "best", choice.Best?.Item.Name);
        WriteManuals(json, choice, texts);
        json.WriteStartArray("choices");
        foreach (RankedBolt bolt in choice.Choices)
        {
            WriteBolt(json, bolt, texts);
        }

        json.WriteEndArray();
        WriteLeftOut(json, choice, texts, units);
        SettingJson.WriteAll(json, settings, texts, units);
        FindingJson.WriteAll(json, "findings", choice.Findings, texts, units);
        CautionJson.WriteAll(json, choice.Cautions, texts);
        json.WriteEndObject();
    }

    private static void WriteManuals(Utf8JsonWriter json, BoltChoice choice, Texts texts)
    {
        JsonNumbers.Flag(json, "isManualsInStock", choice.IsManualsInStock);
        if (choice.Manuals is not { } manuals)
        {
            json.WriteNull("manuals");
            return;
        }

        json.WritePropertyName("manuals");
        WriteBolt(json, manuals, texts);
    }

    private static void WriteLeftOut(Utf8JsonWriter json, BoltChoice choice, Texts texts, DisplayUnits units)
    {
        json.WriteStartArray("leftOut");
        foreach (LeftOut bolt in choice.LeftOut)
        {
            json.WriteStartObject();
            json.WriteString("grade", bolt.Item.Grade.Designation);
            json.WriteString("size", bolt.Item.Thread.Designation);
            json.WriteString("code", bolt.Reason.Code);
            json.WriteString("message", texts.Of(bolt.Reason, units));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string? NameOf(ProtectiveDevice? device) =>
        device is ShearBoltDevice { BreakTorque.Joint.Bolt: { } bolt } ? bolt.ToString() : device?.Name;

    private static void WriteBolt(Utf8JsonWriter json, RankedBolt bolt, Texts texts)
    {
        json.WriteStartObject();
        json.WriteString("grade", bolt.Grade.Designation);
        json.WriteString("size", bolt.Thread.Designation);
        JsonNumbers.Band(json, "tripTorqueNm", bolt.Trip);
        JsonNumbers.Margin(json, "workMargin", bolt.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", bolt.GuardMargin);
        JsonNumbers.Number(json, "tripsPerHour", bolt.TripsPerHour);
        JsonNumbers.Probability(json, "passProbability", bolt.PassProbability);
        JsonNumbers.Flag(json, "isStrongerThanFitted", bolt.IsStrongerThanFitted);
        JsonNumbers.Flag(json, "isStrongerThanSpecified", bolt.IsStrongerThanSpecified);
        json.WriteBoolean("isFitted", bolt.IsFitted);
        json.WriteBoolean("isSpecified", bolt.IsSpecified);
        json.WriteBoolean("isLoose", bolt.IsLoose);
        json.WriteBoolean("leavesRoom", bolt.LeavesRoom);
        json.WriteString("guards", bolt.Verdict.Guards.ToString());
        json.WriteString("quiet", bolt.Verdict.Quiet.ToString());
        JsonNumbers.Probability(json, "onePeakTripsProbability", bolt.OnePeakTrips);
        JsonNumbers.Probability(json, "damagedFirstProbability", bolt.DamagedFirst);
        JsonNumbers.Number(json, "fatigueHoursAtLeast", bolt.FatigueHours);
        json.WriteNumber("holeMm", Si.Meters(bolt.HoleDiameter) * 1000);
        json.WriteBoolean("needsRedrilling", bolt.NeedsRedrilling);
        JsonNumbers.Number(json, "price", bolt.Item.Price);
        GradeStepJson.WriteAll(json, bolt.GradeSteps, texts);
        CautionJson.WriteAll(json, bolt.Cautions, texts);
        json.WriteEndObject();
    }
}
