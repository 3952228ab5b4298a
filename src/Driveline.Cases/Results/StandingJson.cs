using System.Text.Json;
using Driveline.Protection;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes a standing as {state, reason, liftedBy, reasons: [{code, severity, message, because, lift: {code, text}}]}.</summary>
internal static class StandingJson
{
    public static void Write(Utf8JsonWriter json, Standing standing, Texts texts, DisplayUnits units)
    {
        json.WriteStartObject("standing");
        json.WriteString("state", standing.State.ToString());
        StandingReason? first = standing.Reasons.FirstOrDefault();
        JsonNumbers.Text(json, "reason", first is null ? null : texts.Of(first.Why, units));
        JsonNumbers.Text(json, "liftedBy", first is null ? null : texts.Of(first.LiftCode));
        json.WriteStartArray("reasons");
        foreach (StandingReason reason in standing.Reasons)
        {
            json.WriteStartObject();
            json.WriteString("code", reason.Why.Code);
            json.WriteString("severity", reason.Why.Severity.ToString());
            json.WriteString("message", texts.Of(reason.Why, units));
            json.WriteStartArray("because");
            foreach (string path in reason.Why.Because)
            {
                json.WriteStringValue(path);
            }

            json.WriteEndArray();
            json.WriteStartObject("lift");
            json.WriteString("code", reason.LiftCode);
            json.WriteString("text", texts.Of(reason.LiftCode));
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
