using System.Text.Json;
using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes what a bolt head mark can mean as one JSON object. Strengths in MPa.</summary>
public static class IdentifyJson
{
    /// <summary>Writes the identification to a stream, indented, in English with metric units; the stream stays open.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(HeadMarkIdentification identification, Stream stream) =>
        Write(identification, stream, Language.English, DisplayUnits.Metric);

    /// <summary>Writes the identification to a stream, indented; language and units matter for the advice only.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(HeadMarkIdentification identification, Stream stream, Language language, DisplayUnits units) =>
        JsonDocuments.Write(stream, json => Write(identification, json, language, units));

    /// <summary>Writes the identification as a value.</summary>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(HeadMarkIdentification identification, Utf8JsonWriter json, Language language, DisplayUnits units)
    {
        Guard.NotNull(identification, nameof(identification));
        Guard.NotNull(json, nameof(json));
        Texts texts = Texts.In(language);
        json.WriteStartObject();
        json.WriteString("mark", identification.Mark.ToString());
        json.WriteString("thread", identification.Thread.Designation);
        json.WriteStartArray("candidates");
        foreach (HeadMarkCandidate candidate in identification.Candidates)
        {
            json.WriteStartObject();
            json.WriteString("grade", candidate.Name);
            json.WriteString("headMark", candidate.HeadMark);
            json.WriteStartObject("tensileMPa");
            JsonNumbers.Number(json, "low", candidate.Tensile?.SiBand.Low * 1e-6);
            JsonNumbers.Number(json, "high", candidate.Tensile?.SiBand.High * 1e-6);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("advice", string.Join(" ", identification.Findings.Select(f => texts.Of(f, units))));
        FindingJson.WriteAll(json, "findings", identification.Findings, texts, units);
        json.WriteEndObject();
    }
}
