using System.Text.Json;
using Driveline.Advice;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes an advice as one JSON object for other programs.</summary>
/// <remarks>
/// Member names are in camel case, enum values as in C#. What is not known or has no bound is null. Amounts of money are in the
/// case's currency. A reason's factor says how many times as likely it makes the cause. Every caution is always written.
/// </remarks>
public static class AdviceJson
{
    /// <summary>Writes the advice to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(OwnerAdvice advice, Stream stream) => Write(advice, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the advice to a stream, indented; language and units matter for the texts only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(OwnerAdvice advice, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(advice, json, language, units));

    /// <summary>Writes the advice as a value, in English with metric units.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(OwnerAdvice advice, Utf8JsonWriter json) => Write(advice, json, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the advice as a value; language and units matter for the texts only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(OwnerAdvice advice, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(advice, nameof(advice));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        json.WriteStartObject();
        StandingJson.Write(json, advice.Standing, texts, units);
        json.WriteString("symptom", advice.Diagnosis.Complaint.Symptom.ToString());
        json.WriteBoolean("isEnoughKnown", advice.Diagnosis.IsEnoughKnown);
        List(json, "causes", advice.Diagnosis.Causes, c => Cause(json, c, texts, units));
        NextCheck(json, advice.Diagnosis.Next, texts);
        List(json, "remedies", advice.Remedies, r => Remedy(json, r, texts));
        Inspection(json, advice.Inspection, texts, units);
        AdviceCostJson.Write(json, "cost", advice.Costs);
        Deck(json, advice.Deck, texts, units);
        List(json, "boltChange", advice.BoltChange?.Steps ?? [], step => Code(json, step.Code, texts));
        FindingJson.WriteAll(json, "findings", advice.Findings, texts, units);
        List(json, "cautions", advice.Cautions, c => Caution(json, c, texts));
        json.WriteString("weakestBasis", advice.Basis.Kind.ToString());
        json.WriteEndObject();
    }

    private static void Cause(Utf8JsonWriter json, LikelyCause cause, Texts texts, DisplayUnits units)
    {
        Code(json, AdviceCodes.Of(cause.Cause), texts);
        JsonNumbers.Number(json, "probability", cause.Probability.Value);
        json.WriteBoolean("isSeen", cause.IsSeen);
        List(json, "because", cause.Because, r => Reason(json, r, texts, units));
        List(json, "against", cause.Against, r => Reason(json, r, texts, units));
    }

    private static void Reason(Utf8JsonWriter json, Reason reason, Texts texts, DisplayUnits units)
    {
        json.WriteString("code", reason.Finding.Code);
        json.WriteString("text", texts.Of(reason.Finding, units));
        JsonNumbers.Number(json, "factor", reason.Factor);
    }

    // The code is the member of "complaint" in which the answer is stated.
    private static void NextCheck(Utf8JsonWriter json, NextCheck? next, Texts texts)
    {
        if (next is null)
        {
            json.WriteNull("nextCheck");
            return;
        }

        json.WriteStartObject("nextCheck");
        json.WriteString("code", next.Question.Code);
        json.WriteString("text", texts.Of(next.Question.TextCode));
        json.WriteString("why", texts.Of(next.Why));
        JsonNumbers.Number(json, "effort", next.Effort);
        json.WriteString("danger", texts.Of(AdviceCodes.Of(next.Question.Place)));
        json.WriteString("place", next.Question.Place.ToString());
        JsonNumbers.Number(json, "minutes", next.Question.Minutes);
        JsonNumbers.Number(json, "bits", next.Bits);
        List(json, "answers", next.Question.Answers, a =>
        {
            json.WriteString("code", a);
            json.WriteString("text", texts.Of(Fact.Of(next.Question.Code, a).Code));
        });
        List(json, "cautions", next.Question.Cautions, c => Caution(json, c, texts));
        json.WriteEndObject();
    }

    private static void Remedy(Utf8JsonWriter json, Remedy remedy, Texts texts)
    {
        Code(json, remedy.Code, texts);
        JsonNumbers.Margin(json, "workMargin", remedy.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", remedy.GuardMargin);
        json.WriteString("onWorkMargin", remedy.OnWorkMargin.ToString());
        json.WriteString("onGuardMargin", remedy.OnGuardMargin.ToString());
        JsonNumbers.Number(json, "minutes", remedy.Minutes);
        JsonNumbers.Number(json, "costLow", remedy.Cost?.SiBand.Low);
        JsonNumbers.Number(json, "costHigh", remedy.Cost?.SiBand.High);
        json.WriteStartObject("caution");
        Caution(json, remedy.Caution, texts);
        json.WriteEndObject();
    }

    private static void Inspection(Utf8JsonWriter json, InspectionList? list, Texts texts, DisplayUnits units)
    {
        List(json, "inspectBefore", list?.Before ?? [], step => Code(json, step.Code, texts));
        List(json, "inspect", list?.Items ?? [], item =>
        {
            Code(json, item.Code, texts);
            json.WriteString("stop", texts.Of(item.StopCode));
            json.WriteBoolean("isReachedThroughDriveline", item.IsReachedThroughDriveline);
            JsonNumbers.Text(json, "load", item.Load is { } load ? texts.Of(load, units) : null);
        });
        FindingJson.WriteAll(json, "partLoads", list?.PartLoads ?? [], texts, units);
    }

    private static void Deck(Utf8JsonWriter json, DeckReading? deck, Texts texts, DisplayUnits units)
    {
        if (deck is null)
        {
            json.WriteNull("deck");
            return;
        }

        json.WriteStartObject("deck");
        JsonNumbers.Number(json, "pitchDegrees", deck.Attitude.Pitch.Degrees);
        JsonNumbers.Number(json, "frontBelowRearMm", deck.Attitude.FrontBelowRear.Millimeters);
        JsonNumbers.Number(json, "lowestTipMm", deck.Attitude.LowestTip.Millimeters);
        json.WriteString("reachesGround", deck.ReachesGround.ToString());
        JsonNumbers.Number(json, "topLinkChangeMm", deck.TopLinkChange?.Millimeters);
        JsonNumbers.Number(json, "tailWheelDropMm", deck.TailWheelDrop?.Millimeters);
        FindingJson.WriteAll(json, "findings", deck.Findings, texts, units);
        json.WriteEndObject();
    }

    private static void Caution(Utf8JsonWriter json, Caution caution, Texts texts)
    {
        Code(json, caution.Code, texts);
        json.WriteString("source", caution.Source.ToString());
    }

    private static void Code(Utf8JsonWriter json, string code, Texts texts)
    {
        json.WriteString("code", code);
        json.WriteString("text", texts.Of(code));
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> members)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            members(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
