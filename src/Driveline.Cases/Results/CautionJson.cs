using System.Text.Json;
using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes cautions as {code, text}; every one is always written.</summary>
internal static class CautionJson
{
    public static void WriteAll(Utf8JsonWriter json, IReadOnlyList<Caution> cautions, Texts texts)
    {
        json.WriteStartArray("cautions");
        foreach (Caution caution in cautions)
        {
            json.WriteStartObject();
            json.WriteString("code", caution.Code);
            json.WriteString("text", texts.Of(caution.Code));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
