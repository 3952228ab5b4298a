using System.Text.Json;
using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes findings as {code, severity, message}.</summary>
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
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
