using System.Text.Json;
using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>
/// Writes findings as {code, severity, message, bars, settledBy, because, parameters}; numbers in SI, null where there is no bound.
/// </summary>
internal static class FindingJson
{
    public static void WriteAll(Utf8JsonWriter json, string name, IEnumerable<Finding> findings, Texts texts, DisplayUnits units)
    {
        json.WriteStartArray(name);
        foreach (Finding finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("severity", finding.Severity.ToString());
            json.WriteString("message", texts.Of(finding, units));
            json.WriteString("bars", finding.Bars.ToString());
            JsonNumbers.Text(json, "settledBy", finding.SettledBy);
            json.WriteStartArray("because");
            foreach (string path in finding.Because)
            {
                json.WriteStringValue(path);
            }

            json.WriteEndArray();
            WriteParameters(json, finding);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteParameters(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartArray("parameters");
        foreach (FindingParameter parameter in finding.Parameters)
        {
            json.WriteStartObject();
            json.WriteString("name", parameter.Name);
            json.WriteString("kind", parameter.Kind.ToString());
            if (parameter.Text is { } text)
            {
                json.WriteString("value", text);
            }
            else
            {
                JsonNumbers.Number(json, "value", double.IsInfinity(parameter.Value) ? null : parameter.Value);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
