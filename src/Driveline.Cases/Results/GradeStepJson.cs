using System.Text.Json;
using Driveline.Protection;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes what the next grades in the same hole would do; "mustStandNm" is at the part's own input.</summary>
internal static class GradeStepJson
{
    public static void WriteAll(Utf8JsonWriter json, IReadOnlyList<NeighbourGrade> neighbours, Texts texts)
    {
        json.WriteStartArray("gradeSteps");
        foreach (NeighbourGrade neighbour in neighbours)
        {
            Write(json, neighbour, texts);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, NeighbourGrade neighbour, Texts texts)
    {
        json.WriteStartObject();
        json.WriteString("bolt", neighbour.Bolt);
        json.WriteString("grade", neighbour.Grade);
        json.WriteBoolean("isStronger", neighbour.IsStronger);
        json.WriteBoolean("isSpecified", neighbour.IsSpecified);
        JsonNumbers.Band(json, "tripTorqueNm", neighbour.Trip);
        JsonNumbers.Margin(json, "workMargin", neighbour.Verdict.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", neighbour.Verdict.GuardMargin);
        json.WriteString("guards", neighbour.Verdict.Guards.ToString());
        json.WriteString("quiet", neighbour.Verdict.Quiet.ToString());
        json.WriteStartObject("ratio");
        JsonNumbers.Number(json, "low", neighbour.Ratio.Low);
        JsonNumbers.Number(json, "expected", neighbour.Ratio.Expected);
        JsonNumbers.Number(json, "high", neighbour.Ratio.High);
        json.WriteEndObject();
        json.WriteStartArray("parts");
        foreach (GuardedPart part in neighbour.Parts)
        {
            json.WriteStartObject();
            json.WriteString("name", part.Name);
            JsonNumbers.Number(json, "mustStandNm", part.MustStand?.NewtonMeters);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        bool isAsked = neighbour is { IsStronger: true, IsSpecified: false };
        json.WriteBoolean("askMaker", isAsked);
        JsonNumbers.Text(json, "caution", isAsked ? texts.Of("report.grades.caution") : null);
        JsonNumbers.Text(json, "tryBefore", isAsked ? texts.Of("report.grades.before") : null);
        json.WriteEndObject();
    }
}
