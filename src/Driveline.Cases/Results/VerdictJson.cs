using System.Text.Json;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes a verdict as one JSON object for other programs.</summary>
/// <remarks>
/// Member names are in camel case, enum values as in C#; torques are in N·m, referred to the tractor's PTO, and named so. What is
/// not known or has no bound is null. A margin is a ratio at the element's own place; null too when the other side has no bound.
/// Every caution is always written.
/// </remarks>
public static class VerdictJson
{
    /// <summary>Writes the verdict to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(ProtectionVerdict verdict, Stream stream) => Write(verdict, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the verdict to a stream, indented; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(ProtectionVerdict verdict, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(verdict, json, language, units));

    /// <summary>Writes the verdict as a value, in English with metric units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(ProtectionVerdict verdict, Utf8JsonWriter json) => Write(verdict, json, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the verdict as a value; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(ProtectionVerdict verdict, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(verdict, nameof(verdict));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        json.WriteStartObject();
        StandingJson.Write(json, verdict.Standing, texts, units);
        json.WriteString("verdict", verdict.Headline.ToString());
        json.WriteString("guards", verdict.Guards.ToString());
        json.WriteString("quiet", verdict.Quiet.ToString());
        AsSpecifiedJson.Write(json, verdict.AsSpecified, texts, units);
        HistoryJson.Write(json, verdict);
        WriteFitted(json, verdict);
        JsonNumbers.Band(json, "tripTorqueNm", verdict.Trip);
        JsonNumbers.Band(json, "workPeakNm", verdict.WorkPeak);
        WriteWeakest(json, verdict.WeakestPart);
        JsonNumbers.Margin(json, "workMargin", verdict.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", verdict.GuardMargin);
        json.WriteStartArray("parts");
        foreach (PartCheck part in verdict.Parts)
        {
            WritePart(json, verdict, part);
        }

        json.WriteEndArray();
        json.WriteStartArray("devices");
        foreach (DeviceCheck device in verdict.Devices)
        {
            WriteDevice(json, verdict, device);
        }

        json.WriteEndArray();
        GradeStepJson.WriteAll(json, verdict.NeighbourGrades, texts);
        FindingJson.WriteAll(json, "findings", verdict.Findings, texts, units);
        WriteMeasurements(json, verdict, texts);
        CautionJson.WriteAll(json, verdict.Cautions, texts);
        JsonNumbers.Text(json, "weakestBasis", verdict.WeakestBasis?.Kind.ToString());
        json.WriteEndObject();
    }

    private static void WriteFitted(Utf8JsonWriter json, ProtectionVerdict verdict)
    {
        json.WriteStartObject("fittedAgainstSpecified");
        WriteComparison(json, verdict.FittedAgainstSpecified);
        json.WriteStartArray("devices");
        foreach (FittedAgainstSpecified comparison in verdict.Comparisons)
        {
            json.WriteStartObject();
            json.WriteString("name", comparison.Device!.Name);
            JsonNumbers.Text(json, "specified", comparison.Specified is ShearBoltDevice { BreakTorque.Joint.Bolt: { } bolt }
                ? bolt.ToString() : comparison.Specified?.Name);
            WriteComparison(json, comparison);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteComparison(Utf8JsonWriter json, FittedAgainstSpecified fitted)
    {
        json.WriteString("answer", fitted.Answer switch
        {
            FittedComparison.Weaker => "weaker",
            FittedComparison.Same => "same",
            FittedComparison.Stronger => "stronger",
            _ => "notKnown",
        });
        JsonNumbers.Band(json, "ratio", fitted.Ratio);
    }

    private static void WriteWeakest(Utf8JsonWriter json, PartCheck? weakest)
    {
        if (weakest is null)
        {
            json.WriteNull("weakestPart");
            return;
        }

        json.WriteStartObject("weakestPart");
        json.WriteString("name", weakest.Part.Name);
        JsonNumbers.Band(json, "damagedAtNm", weakest.DamagedAtPto);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, ProtectionVerdict verdict, PartCheck check)
    {
        json.WriteStartObject();
        json.WriteString("name", check.Part.Name);
        json.WriteString("kind", check.Part.Kind.ToString());
        json.WriteString("guards", check.Guards.ToString());
        JsonNumbers.Band(json, "damagedAtNm", check.DamagedAtPto);
        JsonNumbers.Band(json, "actsAtNm", AtPto(verdict, check.Part, check.ActsAt));
        JsonNumbers.Margin(json, "margin", check.Margin);
        JsonNumbers.Text(json, "guardedBy", check.GuardedBy?.Name);
        json.WriteString("side", check.Side.ToString());
        JsonNumbers.Text(json, "inertiaBetween", check.InertiaBetween?.Name);
        JsonNumbers.Text(json, "limitKind", check.Part.Limit?.Kind.ToString());
        json.WriteEndObject();
    }

    private static void WriteDevice(Utf8JsonWriter json, ProtectionVerdict verdict, DeviceCheck check)
    {
        json.WriteStartObject();
        json.WriteString("name", check.Device.Name);
        json.WriteString("kind", check.Device.Kind.ToString());
        json.WriteString("quiet", check.Quiet.ToString());
        JsonNumbers.Band(json, "tripTorqueNm", check.TripAtPto);
        JsonNumbers.Band(json, "runningTorqueNm", AtPto(verdict, check.Device, check.Device.Running));
        JsonNumbers.Margin(json, "margin", check.Margin);
        JsonNumbers.Number(json, "fatigueHoursAtLeast", !check.Device.NeverLetsGo && check.Fatigue?.Hours is { } hours
            && !double.IsInfinity(hours) ? hours : null);
        json.WriteString("afterTrip", check.Device.AfterTrip.ToString());
        json.WriteEndObject();
    }

    private static void WriteMeasurements(Utf8JsonWriter json, ProtectionVerdict verdict, Texts texts)
    {
        json.WriteStartArray("measureNext");
        foreach (Measurement measurement in verdict.MeasureNext)
        {
            json.WriteStartObject();
            json.WriteString("code", measurement.Code);
            JsonNumbers.Text(json, "subject", measurement.Subject);
            json.WriteStartArray("subjects");
            foreach (string subject in measurement.Subjects)
            {
                json.WriteStringValue(subject);
            }

            json.WriteEndArray();
            json.WriteString("reason", measurement.Reason);
            json.WriteString("text", texts.Of(measurement.Code));
            JsonNumbers.Number(json, "minutes", measurement.Minutes);
            json.WriteString("where", measurement.Place.ToString());
            WriteChanges(json, measurement);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteChanges(Utf8JsonWriter json, Measurement measurement)
    {
        json.WriteStartArray("changes");
        foreach ((bool holds, string answer) in new[]
        {
            ((measurement.Changes & Bars.Guards) != 0, "guards"), ((measurement.Changes & Bars.Quiet) != 0, "quiet"),
            (measurement.ChangesAsSpecified, "asSpecified"),
        })
        {
            if (holds)
            {
                json.WriteStringValue(answer);
            }
        }

        json.WriteEndArray();
    }

    private static TorqueBand? AtPto(ProtectionVerdict verdict, Element element, TorqueBand? torque) =>
        torque is null ? null : verdict.Question.Chain.ReferToPto(element, torque);
}
