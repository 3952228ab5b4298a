using System.Text.Json;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes a simulated engagement or strike as one JSON object for other programs.</summary>
/// <remarks>
/// Member names are in camel case, enum values as in C#; every torque is in N·m at the part's own input. What is not known or has
/// no bound is null. Times count from the start of the run; angles and heat are those of every clutch that slips, at the PTO. Every
/// caution is always written.
/// </remarks>
public static class SimulationJson
{
    /// <summary>Writes the run to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(CaseSimulation run, Stream stream) => Write(run, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the run to a stream, indented; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(CaseSimulation run, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(run, json, language, units));

    /// <summary>Writes the run as a value; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(CaseSimulation run, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(run, nameof(run));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        SimulationOutcome? with = run.Check?.With;
        json.WriteStartObject();
        json.WriteString("event", run.Event.ToString());
        Flag(json, "tripped", run.Check?.Tripped);
        JsonNumbers.Text(json, "trippedDevice", with?.TrippedDevice?.Name);
        JsonNumbers.Number(json, "tripTimeS", with?.TripTime?.Seconds);
        JsonNumbers.Number(json, "throughTimeS", run.Check?.Without?.ThroughTime?.Seconds);
        json.WriteStartArray("peakTorqueNm");
        WriteLoads(json, run);
        json.WriteEndArray();
        JsonNumbers.Number(json, "slipEnergyJ", with?.SlipEnergy.Joules);
        JsonNumbers.Number(json, "slipAngleRad", with?.SlipAngle.Radians);
        WriteSlips(json, with);
        JsonNumbers.Number(json, "energyErrorRelative", Worst(with?.EnergyError, run.Check?.Without?.EnergyError));
        JsonNumbers.Number(json, "runLengthS", (with ?? run.Check?.Without)?.Length.Seconds);
        json.WriteBoolean("restsOnFacts", run.Simulation?.RestsOnFacts ?? false);
        FindingJson.WriteAll(json, "findings", run.Findings, texts, units);
        CautionJson.WriteAll(json, run.Cautions, texts);
        json.WriteEndObject();
    }

    private static void WriteLoads(Utf8JsonWriter json, CaseSimulation run)
    {
        foreach (SimulatedLoad load in run.Check?.Loads ?? [])
        {
            Start(json, load.Element, load.DamagedAt, load.WithProtection?.NewtonMeters, load.WithoutProtection?.NewtonMeters);
            json.WriteString("damagedWithProtection", load.DamagedWith.ToString());
            json.WriteString("damagedWithoutProtection", load.DamagedWithout.ToString());
            json.WriteEndObject();
        }

        if (run.Check is null && run.Chain is { } chain)
        {
            foreach (Part part in chain.Parts)
            {
                Start(json, part, part.Limit?.DamagedAt, null, null);
                json.WriteString("damagedWithProtection", Answer.NotKnown.ToString());
                json.WriteString("damagedWithoutProtection", Answer.NotKnown.ToString());
                json.WriteEndObject();
            }
        }
    }

    private static void Start(Utf8JsonWriter json, Element element, TorqueBand? damagedAt, double? withNm, double? withoutNm)
    {
        json.WriteStartObject();
        json.WriteString("part", element.Name);
        json.WriteString("kind", element is ProtectiveDevice device ? device.Kind.ToString() : ((Part)element).Kind.ToString());
        json.WriteBoolean("isDevice", element is ProtectiveDevice);
        JsonNumbers.Number(json, "withProtection", withNm);
        JsonNumbers.Number(json, "withoutProtection", withoutNm);
        JsonNumbers.Band(json, "damagedAtNm", damagedAt);
    }

    private static void WriteSlips(Utf8JsonWriter json, SimulationOutcome? with)
    {
        json.WriteStartArray("slips");
        foreach (SimulatedSlip slip in with?.Slips ?? [])
        {
            json.WriteStartObject();
            json.WriteString("clutch", slip.Clutch);
            json.WriteNumber("energyJ", slip.Heat.Joules);
            json.WriteNumber("angleRad", slip.Slip.Radians);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Flag(Utf8JsonWriter json, string name, bool? value)
    {
        if (value is { } known)
        {
            json.WriteBoolean(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static double? Worst(double? first, double? second) => first is { } a && second is { } b ? Math.Max(a, b) : first ?? second;
}
