using System.Text.Json;
using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes cautions as {code, text}; every one is always written.</summary>
internal static class CautionJson
{
    public static void WriteAll(Utf8JsonWriter json, IReadOnlyList<Caution> cautions, Texts texts)
    {
        ResultOptions options = ResultOptions.Default.WithLanguage(texts.Language);
        json.WriteStartArray("cautions");
        foreach (Caution caution in cautions)
        {
            CautionRows.Shape.Write(json, caution, options);
        }

        json.WriteEndArray();
    }
}
