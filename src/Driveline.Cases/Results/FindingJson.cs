using System.Text.Json;
using Driveline.Findings;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes findings where the rest is written by hand.</summary>
internal static class FindingJson
{
    public static void WriteAll(Utf8JsonWriter json, string name, IEnumerable<Finding> findings, Texts texts, DisplayUnits units)
    {
        ResultOptions options = ResultOptions.Default.WithLanguage(texts.Language).WithUnits(units);
        json.WriteStartArray(name);
        foreach (Finding finding in findings)
        {
            FindingRows.Shape.Write(json, finding, options);
        }

        json.WriteEndArray();
    }
}
