using System.Text.Json;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>Writes what hours of work say: {from, hours, breaks, breaksAtEngagement, changed, breaksPerHourAtMost, settlesQuiet}.</summary>
internal static class HistoryJson
{
    public static void Write(Utf8JsonWriter json, ProtectionVerdict verdict)
    {
        if (verdict.Question.History is not { } history)
        {
            json.WriteNull("history");
            return;
        }

        json.WriteStartObject("history");
        json.WriteString("from", history.From.ToString());
        JsonNumbers.Number(json, "hours", history.Hours);
        json.WriteNumber("breaks", history.Breaks);
        JsonNumbers.Number(json, "breaksAtEngagement", history.BreaksAtEngagement);
        JsonNumbers.Flag(json, "changed", history.IsChanged);
        JsonNumbers.Number(json, "breaksPerHourAtMost", history.BreaksPerHourAtMost);
        json.WriteBoolean("settlesQuiet", verdict.IsQuietByExperience);
        json.WriteEndObject();
    }
}
