using System.Text.Json;
using Driveline.Protection;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes whether what is fitted is what the manual names: {answer, for, against, open}.</summary>
internal static class AsSpecifiedJson
{
    public static void Write(Utf8JsonWriter json, AsSpecified judged, Texts texts, DisplayUnits units)
    {
        json.WriteStartObject("asSpecified");
        json.WriteString("answer", judged.Answer.ToString());
        FindingJson.WriteAll(json, "for", judged.For, texts, units);
        FindingJson.WriteAll(json, "against", judged.Against, texts, units);
        FindingJson.WriteAll(json, "open", judged.Open, texts, units);
        json.WriteEndObject();
    }
}
