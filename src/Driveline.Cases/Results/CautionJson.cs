using System.Text.Json;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes cautions as {code, text}; every one is always written.</summary>
internal static class CautionJson
{
    public static void WriteAll(Utf8JsonWriter json, IReadOnlyList<string> codes, Texts texts)
    {
        json.WriteStartArray("cautions");
        foreach (string code in codes)
        {
            json.WriteStartObject();
            json.WriteString("code", code);
            json.WriteString("text", texts.Of(code));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
