using System.Text.Json;
using Driveline.Quantities;
using Driveline.Torsion;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>
/// Writes what a torsional run found as one JSON object. Units stand in the names; a torque is at the element's own speed.
/// </summary>
/// <remarks>
/// Times count from the start of the run. torqueNm of a peak is signed: the larger of the forward and the reverse peak, of two that are
/// equal to 1e-9 the earlier; null when unbounded. Values are those of <see cref="TransientResult"/> at full precision.
/// </remarks>
public static class TransientJson
{
    private const double Same = 1e-9;

    /// <summary>Writes the result to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs.</exception>
    public static void Write(TransientResult result, Stream stream) => Write(result, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the result to a stream, indented; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs.</exception>
    public static void Write(TransientResult result, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(result, json, language, units));

    /// <summary>Writes the result as a value; language and units matter for the messages only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="InvalidOperationException">The run did not watch springs.</exception>
    public static void Write(TransientResult result, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        TorsionModel model = Guard.NotNull(result, nameof(result)).Model;
        Guard.NotNull(json, nameof(json));
        json.WriteStartObject();
        json.WriteBoolean("isComplete", result.IsComplete);
        WriteEvents(json, result);
        json.WriteStartArray("peaks");
        foreach (string element in model.Elements)
        {
            WritePeak(json, result, element);
        }

        json.WriteEndArray();
        WriteFinal(json, result, model);
        WriteEnergy(json, result);
        FindingJson.WriteAll(json, "findings", result.Findings, Texts.In(language), units);
        json.WriteEndObject();
    }

    private static void WriteEvents(Utf8JsonWriter json, TransientResult result)
    {
        json.WriteStartArray("events");
        for (int i = 0; i < result.EventCount; i++)
        {
            TransientEvent happened = result.Event(i);
            json.WriteStartObject();
            json.WriteString("kind", happened.Kind.ToString());
            json.WriteString("element", happened.Part);
            json.WriteNumber("timeS", happened.Time.Seconds);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePeak(Utf8JsonWriter json, TransientResult result, string element)
    {
        json.WriteStartObject();
        json.WriteString("element", element);
        WriteSigned(json, string.Empty, result.Peak(element), result.ReversePeak(element));
        if (result.HasSpring(element))
        {
            WriteSigned(json, "spring", result.SpringPeak(element), result.ReverseSpringPeak(element));
        }

        JsonNumbers.Number(json, "forwardTorqueNm", result.Peak(element).Own?.NewtonMeters);
        JsonNumbers.Number(json, "forwardTimeS", result.Peak(element).Time.Seconds);
        JsonNumbers.Number(json, "reverseTorqueNm", result.ReversePeak(element).Own?.NewtonMeters);
        JsonNumbers.Number(json, "reverseTimeS", result.ReversePeak(element).Time.Seconds);
        json.WriteEndObject();
    }

    private static void WriteSigned(Utf8JsonWriter json, string prefix, TorquePeak forward, TorquePeak reverse)
    {
        double most = forward.Own?.NewtonMeters ?? double.PositiveInfinity;
        double least = reverse.Own?.NewtonMeters ?? double.PositiveInfinity;
        bool isSame = Math.Abs(most - least) <= Same * most;
        bool isForward = double.IsInfinity(most) || (isSame ? forward.Time.Seconds <= reverse.Time.Seconds : most > least);
        double torque = isForward ? most : -least;
        JsonNumbers.Number(json, prefix.Length == 0 ? "torqueNm" : prefix + "TorqueNm", torque);
        JsonNumbers.Number(json, prefix.Length == 0 ? "timeS" : prefix + "TimeS", (isForward ? forward : reverse).Time.Seconds);
    }

    private static void WriteFinal(Utf8JsonWriter json, TransientResult result, TorsionModel model)
    {
        json.WriteStartObject("finalState");
        JsonNumbers.Number(json, "timeS", result.Time.Seconds);
        json.WriteStartArray("rotors");
        foreach (string rotor in model.Rotors)
        {
            json.WriteStartObject();
            json.WriteString("name", rotor);
            JsonNumbers.Number(json, "speedRadS", result.SpeedRadPerS(rotor));
            JsonNumbers.Number(json, "angleRad", result.TurnedRad(rotor));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("shafts");
        foreach (string element in model.Elements)
        {
            json.WriteStartObject();
            json.WriteString("name", element);
            JsonNumbers.Number(json, "torqueNm", result.TorqueNm(element));
            JsonNumbers.Number(json, "springTorqueNm", result.SpringTorqueNm(element));
            JsonNumbers.Number(json, "slipRad", result.SlipRad(element));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteEnergy(Utf8JsonWriter json, TransientResult result)
    {
        EnergyBalance energy = result.Energies;
        json.WriteStartObject("energy");
        JsonNumbers.Number(json, "startJ", energy.Start);
        JsonNumbers.Number(json, "driveJ", energy.Drive);
        JsonNumbers.Number(json, "torquesJ", energy.Torques);
        JsonNumbers.Number(json, "heldRotorsJ", energy.HeldRotors);
        JsonNumbers.Number(json, "dampingJ", energy.Damping);
        JsonNumbers.Number(json, "viscousJ", energy.Viscous);
        JsonNumbers.Number(json, "slipJ", energy.Slip);
        JsonNumbers.Number(json, "impactJ", energy.Impact);
        JsonNumbers.Number(json, "storedJ", energy.Stored);
        JsonNumbers.Number(json, "errorRelative", result.EnergyImbalance);
        json.WriteEndObject();
    }
}
